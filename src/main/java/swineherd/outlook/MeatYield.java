package swineherd.outlook;

import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Band;
import swineherd.figures.Breed;
import swineherd.figures.Carcass;
import swineherd.figures.Freezer;
import swineherd.figures.OutsideDomainException;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * What a group will bring to the freezer, scalded, head off, in usual cuts with the bone in. One
 * for each group whose number and growth are known and that has not gone.
 *
 * @param pigs name of the group
 * @param live live weight of one when it goes, kg
 * @param hanging hanging weight of one, kg
 * @param meat wrapped meat of all, kg
 * @param freezer freezer room for it, L
 * @param freezesADay meat that a freezer of that size freezes in a day, kg
 */
public record MeatYield(
    String pigs,
    double live,
    Band hanging,
    Band meat,
    Band freezer,
    Band freezesADay,
    List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      Leaving leaving = Leaving.of(group, courses);
      boolean gone = setup.isGone(group);
      if (gone || group.count() == null || leaving.course() == null) {
        continue;
      }
      List<String> grounds =
          leaving.grounds("pigs[" + i + "]").and("pigs[" + i + "]", "count").list();
      double live = leaving.endWeight();
      try {
        Pen pen = setup.pen(group.pen()).orElse(null);
        Band meat = meat(live, group, pen).times(group.count());
        Band freezer = Freezer.litres(meat.likely());
        all.add(
            new MeatYield(
                group.name(),
                live,
                hanging(live, pen),
                meat,
                freezer,
                Freezer.freezesKgADay(freezer.likely()),
                grounds));
      } catch (OutsideDomainException e) {
        all.add(new NotWorkedOut("meat", group.name(), e.getMessage(), grounds));
      }
    }
    return all;
  }

  /**
   * Hot carcass of one pig, kg.
   *
   * @param live live weight in kg
   * @param pen where it lives; null if not said
   * @throws OutsideDomainException if it is too light or too heavy
   */
  public static Band hanging(double live, Pen pen) {
    boolean pastured = pen != null && pen.ground() == Pen.Ground.MOVED_PASTURE;
    return Carcass.hangingKg(
        live, Carcass.dressingPercent(Carcass.Style.HEAD_OFF_SKIN_ON, pastured, false));
  }

  /**
   * Wrapped meat of one pig, kg.
   *
   * @throws OutsideDomainException as {@link #hanging}
   */
  public static Band meat(double live, Group group, Pen pen) {
    boolean lard = group.breed() != null && Breed.named(group.breed()).type() == Breed.Type.LARD;
    return Carcass.meatKg(hanging(live, pen), Carcass.meatPercent(Carcass.Cutting.BONE_IN, lard));
  }
}
