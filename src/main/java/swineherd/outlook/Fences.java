package swineherd.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import swineherd.figures.OutsideDomainException;
import swineherd.setup.Fence;
import swineherd.setup.Setup;

/** The outlooks on the fence of every pen in which there are, or will be, pigs. */
final class Fences {
  private Fences() {}

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (Occupants pigs : Occupants.of(setup, courses)) {
      Fence.Kind kind = pigs.pen().fence().kind();
      all.add(PenUse.of(pigs));
      if (kind == null) {
        continue;
      }
      Wires wires = Wires.of(pigs);
      all.add(wires);
      all.add(SolidFence.of(pigs));
      all.addAll(Training.of(pigs));
      if (kind == Fence.Kind.ELECTRIC || kind == Fence.Kind.BOTH) {
        live(pigs, wires, all);
      }
    }
    return all;
  }

  private static void live(Occupants pigs, Wires wires, List<Outlook> all) {
    FrozenGround frozen =
        orNotWorkedOut("frozen ground", pigs, () -> FrozenGround.of(pigs), all).orElse(null);
    Optional<FarEnd> far =
        orNotWorkedOut("volts at the far end", pigs, () -> FarEnd.of(pigs, wires), all);
    EnergizerNeed energizer = EnergizerNeed.of(pigs, wires, far);
    all.add(Voltage.of(pigs, frozen != null && frozen.now()));
    all.add(energizer);
    all.add(EarthNeed.of(pigs, energizer, frozen));
    if (frozen != null) {
      for (Training training : Training.of(pigs)) {
        FrozenTraining.of(training, frozen).ifPresent(all::add);
      }
    }
    orNotWorkedOut("battery and panel", pigs, () -> PowerNeed.of(pigs, energizer), all)
        .ifPresent(all::add);
    far.ifPresent(all::add);
  }

  private static <T> Optional<T> orNotWorkedOut(
      String figure, Occupants pigs, Supplier<Optional<T>> figured, List<Outlook> all) {
    try {
      return figured.get();
    } catch (OutsideDomainException e) {
      all.add(
          new NotWorkedOut(figure, pigs.pen().name(), e.getMessage(), List.of(pigs.fence("kind"))));
      return Optional.empty();
    }
  }
}
