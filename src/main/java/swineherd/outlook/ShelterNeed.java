package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Allometry;
import swineherd.figures.Hut;
import swineherd.rulebook.Table;
import swineherd.setup.Setup;

/**
 * The floor to lie on that the pigs of a pen need at the weight they reach in it, to lie apart and
 * keep it clean. There is one for each pen in which pigs are or will be.
 *
 * @param pen name of the pen
 * @param area m2 for all of them
 * @param weight of the heaviest, kg
 * @param opening air gap high up on each of two sides in a closed house, m2
 * @param by a week before they come; today if they are there
 */
public record ShelterNeed(
    String pen, double area, double weight, double opening, LocalDate by, List<String> grounds)
    implements Outlook {

  private static final double SQUARE_CM = 10_000;
  private static final double SQUARE_INCH = 0.0254 * 0.0254;

  /** The opening in both units; areas are else shown in whole square metres or feet. */
  public String openingWords() {
    return Math.round(opening * SQUARE_CM)
        + " cm2 ("
        + Math.round(opening / SQUARE_INCH)
        + " square inches)";
  }

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (PenStays in : PenStays.of(setup, courses)) {
      double area = 0;
      double heaviest = 0;
      Grounds grounds = new Grounds();
      for (Stay stay : in.stays()) {
        double weight = Math.max(Allometry.LIGHTEST, stay.weightOn(stay.to()));
        area += Hut.bedArea(Hut.Season.SUMMER, stay.count(), weight);
        heaviest = Math.max(heaviest, weight);
        grounds.and(stay.grounds().list());
      }
      all.add(
          new ShelterNeed(
              in.pen().name(),
              area,
              heaviest,
              in.count() * Table.named("air-limits").row("opening-a-pig").number("value"),
              Stay.readyBy(in.stays(), setup.checkOn()),
              grounds.list()));
    }
    return all;
  }
}
