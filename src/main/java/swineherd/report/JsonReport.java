package swineherd.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import swineherd.advice.Advice;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.advice.TickedOff;
import swineherd.advice.Unanswered;
import swineherd.advice.Value;
import swineherd.compare.Matters;
import swineherd.rulebook.Card;
import swineherd.rulebook.Rulebook;
import swineherd.setup.Problem;

/**
 * A checklist as JSON. The names in it are a contract with other programs: fields are added, never
 * renamed. Numbers under {@code figures} are in SI units whatever the keeper reads.
 */
public final class JsonReport {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Checklist checklist;
  private final List<Matters.Matter> matters;
  private final Wording wording;

  /**
   * @param matters the unanswered questions that matter, the one that matters most first; pairs
   *     stand under {@code together}
   */
  public JsonReport(Checklist checklist, List<Matters.Matter> matters) {
    this.checklist = checklist;
    this.matters = matters;
    this.wording = new Wording(checklist.file().setup().units());
  }

  /** The whole report, indented. */
  public String render() {
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(tree()) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The whole report as a tree, to which more may be added. */
  ObjectNode tree() {
    ObjectNode root = JSON.createObjectNode();
    root.put("checkedOn", checklist.file().setup().checkOn().toString());
    root.put("name", checklist.file().setup().name());
    ArrayNode items = root.putArray("items");
    for (Item item : checklist.items()) {
      item(items.addObject(), items.size(), item);
    }
    ArrayNode inOrder = root.putArray("inOrder");
    for (Checklist.InOrder entry : checklist.inOrder()) {
      ObjectNode node = inOrder.addObject();
      node.put("id", entry.card().id());
      node.put("about", entry.advice().about());
      node.put("heading", wording.fill(entry.card().heading(), entry.advice()));
      figures(node.putArray("figures"), entry.advice());
    }
    ArrayNode tickedOff = root.putArray("tickedOff");
    for (TickedOff off : checklist.tickedOff()) {
      ObjectNode node = tickedOff.addObject();
      node.put("id", off.item().id());
      node.put("about", off.item().advice().about());
      node.put("heading", wording.fill(off.item().card().heading(), off.item().advice()));
      node.put("on", off.on().toString());
      node.put("again", off.again().toString());
    }
    ArrayNode unanswered = root.putArray("unanswered");
    Set<String> moving = new HashSet<>();
    ArrayNode together = JSON.createArrayNode();
    for (Matters.Matter matter : matters) {
      ObjectNode node = (matter.with() == null ? unanswered : together).addObject();
      question(node, matter.question());
      if (matter.with() == null) {
        moving.add(matter.question().path());
      } else {
        question(node.putObject("with"), matter.with());
      }
      node.put("moves", matter.moves());
      node.put("by", Math.round(matter.by() * 10) / 10.0);
      matter.items().forEach(node.putArray("items")::add);
    }
    for (Unanswered question : checklist.unanswered()) {
      if (!moving.contains(question.path())) {
        ObjectNode node = unanswered.addObject();
        question(node, question);
        node.put("moves", 0);
      }
    }
    root.set("together", together);
    root.putObject("figures");
    ArrayNode problems = root.putArray("problems");
    for (Problem problem : checklist.file().unusual()) {
      ObjectNode node = problems.addObject();
      node.put("path", problem.path());
      node.put("line", problem.line());
      node.put("message", problem.message());
      node.put("accepted", problem.accepted());
    }
    return root;
  }

  private static void question(ObjectNode node, Unanswered question) {
    node.put("path", question.path());
    node.put("question", Rulebook.questions().get(question.question()).ask());
  }

  /** Writes one item into a node. */
  void item(ObjectNode node, int number, Item item) {
    Card card = item.card();
    Advice advice = item.advice();
    node.put("rank", number);
    node.put("id", item.id());
    node.put("topic", card.topic());
    node.put("about", advice.about());
    node.put("stage", key(item.stage()));
    node.put("heading", wording.fill(card.heading(), advice));
    node.put("do", wording.fill(card.doIt(), advice));
    node.put("why", wording.fill(card.why(), advice));
    ArrayNode because = node.putArray("because");
    for (Item.Because answer : item.because()) {
      because
          .addObject()
          .put("path", answer.path())
          .put("label", answer.label())
          .put("said", answer.said());
    }
    figures(node.putArray("figures"), advice);
    node.put("dueOn", item.due() == null ? null : item.due().toString());
    node.put("consequence", key(card.consequence()));
    node.put("likelihood", item.rank().likelihood());
    ObjectNode sum = node.putObject("rankSum");
    sum.put("emergency", item.rank().emergency());
    sum.put("consequence", item.rank().consequence());
    sum.put("likelihood", item.rank().likelihood());
    sum.put("soon", Math.round(item.rank().soon() * 1000) / 1000.0);
    sum.put("score", item.rank().score());
    node.put("referral", key(item.referral()));
    node.put("caution", wording.fill(card.caution(), advice));
    more(node, "ready", wording.fill(card.ready(), advice));
    more(node, "atRisk", wording.fill(card.atRisk(), advice));
    more(node, "meat", wording.fill(card.meat(), advice));
    node.put("evidence", key(card.evidence()));
    ArrayNode sources = node.putArray("sources");
    card.sources().forEach(k -> sources.add(TextReport.source(k)));
    ArrayNode through = node.putArray("rules");
    item.through().forEach(through::add);
  }

  /** Fields that only some items have. */
  private static void more(ObjectNode node, String name, String text) {
    if (text != null) {
      node.put(name, text);
    }
  }

  private static void figures(ArrayNode figures, Advice advice) {
    for (Map.Entry<String, Value> entry : advice.values().entrySet()) {
      Value value = entry.getValue();
      ObjectNode node = figures.addObject().put("name", entry.getKey());
      if (value instanceof Value.Amount amount) {
        node.put("low", amount.band().low());
        node.put("likely", amount.band().likely());
        node.put("high", amount.band().high());
        node.put("unit", amount.dimension().base());
      } else if (value instanceof Value.Amounts several) {
        several.amounts().forEach(node.putArray("values")::add);
        node.put("unit", several.dimension().base());
      } else if (value instanceof Value.Count count) {
        node.put("likely", count.count());
      } else if (value instanceof Value.Chance chance) {
        node.put("likely", chance.chance());
        node.put("unit", "probability");
      } else if (value instanceof Value.Day day) {
        node.put("date", day.day().toString());
      } else {
        node.put("words", ((Value.Words) value).words());
      }
    }
  }

  static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
