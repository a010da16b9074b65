package swineherd.outlook;

import java.util.List;
import swineherd.figures.Breed;
import swineherd.figures.ElectricFence;
import swineherd.rulebook.Table;
import swineherd.setup.Fence;
import swineherd.setup.Place;
import swineherd.setup.Setup;

/**
 * What the volts at the far end of a live fence mean, and how many it needs. More are needed by
 * haired breeds, on dry or frozen ground and in training; a breed or a soil nobody named counts as
 * such.
 *
 * @param pen name of the pen
 * @param verdict what the reading means; null if nobody measured
 * @param volts the reading, V; null if nobody measured
 * @param demanding whether the stricter limits hold
 * @param least under this something must be done, V
 * @param aim what to aim at, V
 */
public record Voltage(
    String pen,
    ElectricFence.Verdict verdict,
    Double volts,
    boolean demanding,
    double least,
    double aim,
    List<String> grounds)
    implements Outlook {

  static Voltage of(Occupants pigs, boolean frozenNow) {
    boolean demanding = frozenNow || dry(pigs.setup()) || haired(pigs) || inTraining(pigs);
    Table.Row limits = Table.named("fence-voltage").row(demanding ? "demanding" : "ordinary");
    Double volts = pigs.pen().fence().endVoltage();
    return new Voltage(
        pigs.pen().name(),
        volts == null ? null : ElectricFence.voltage(volts, demanding),
        volts,
        demanding,
        limits.number("act_below"),
        limits.number("aim"),
        List.of(pigs.fence("endVoltage")));
  }

  private static boolean dry(Setup setup) {
    Place.Soil soil = setup.place().soil();
    return soil == null || soil == Place.Soil.SAND || soil == Place.Soil.DRY_LOAM;
  }

  private static boolean haired(Occupants pigs) {
    return pigs.members().stream()
        .map(Occupants.Member::group)
        .anyMatch(
            g ->
                g.breed() == null
                    || Breed.named(g.breed()).coat() == Breed.Coat.HEAVY
                    || (g.crossedWith() != null
                        && Breed.named(g.crossedWith()).coat() == Breed.Coat.HEAVY));
  }

  private static boolean inTraining(Occupants pigs) {
    return pigs.pen().fence().kind() == Fence.Kind.ELECTRIC
        && pigs.members().stream().anyMatch(m -> !Boolean.TRUE.equals(m.group().trained()));
  }
}
