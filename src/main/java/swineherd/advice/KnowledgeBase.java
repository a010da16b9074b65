package swineherd.advice;

import java.util.ArrayList;
import java.util.List;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import swineherd.rulebook.Rulebook;

/** The compiled rules. Made once for each process, safe to share; sessions are not. */
final class KnowledgeBase {
  private KnowledgeBase() {}

  static KieBase shipped() {
    return Shipped.BASE;
  }

  private static final class Shipped {
    static final KieBase BASE = load();

    private static KieBase load() {
      List<Model> models = new ArrayList<>();
      for (String name : Rulebook.models()) {
        try {
          models.add(
              Class.forName(name).asSubclass(Model.class).getDeclaredConstructor().newInstance());
        } catch (ReflectiveOperationException e) {
          throw new IllegalStateException("compiled rules are missing: build again", e);
        }
      }
      return KieBaseBuilder.createKieBaseFromModel(models);
    }
  }
}
