package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Allometry;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.setup.Shelter;

/**
 * The floor of a shelter that pigs use in the warm months only, where they cannot all lie in it
 * even close together on the belly. What a bed needs in the cold is another matter.
 *
 * @param pen name of the pen
 * @param floor m2 of the shelter
 * @param needed m2 for all of them close together, at the weight they reach
 * @param roomy m2 for all of them flat on the side
 * @param weight of the heaviest then, kg
 * @param by first day on which they do not fit; today if that is past
 */
public record ShelterFloor(
    String pen,
    double floor,
    double needed,
    double roomy,
    double weight,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  private static final int HALF_A_YEAR = 6;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    Weather weather = new Weather(setup.place());
    List<Outlook> all = new ArrayList<>();
    for (PenStays in : PenStays.of(setup, courses)) {
      Pen pen = in.pen();
      List<Stay> there = in.stays();
      Shelter shelter = pen.shelter();
      if (shelter.floorArea() == null || shelter.kind() == Shelter.Kind.NONE) {
        continue;
      }
      if (there.stream().anyMatch(s -> isThereInTheCold(s, weather))) {
        continue;
      }
      LocalDate first = null;
      LocalDate most = null;
      for (LocalDate day : Stay.days(there)) {
        if (lying("bed-huddled", day, there) > shelter.floorArea()) {
          first = first == null ? day : first;
          most =
              most == null || lying("bed-huddled", day, there) > lying("bed-huddled", most, there)
                  ? day
                  : most;
        }
      }
      if (first != null) {
        Grounds grounds = Grounds.of(in.path(), "shelter.floorArea");
        there.forEach(s -> grounds.and(s.grounds().list()));
        LocalDate at = most;
        all.add(
            new ShelterFloor(
                pen.name(),
                shelter.floorArea(),
                lying("bed-huddled", at, there),
                lying("bed-summer", at, there),
                there.stream()
                    .filter(s -> s.isThereOn(at))
                    .mapToDouble(s -> s.weightOn(at))
                    .max()
                    .orElse(0),
                first,
                grounds.list()));
      }
    }
    return all;
  }

  /** Cold are the months half a year from the warm ones; in the tropics none are. */
  private static boolean isThereInTheCold(Stay stay, Weather weather) {
    return stay.days()
        .anyMatch(d -> !weather.isWarm(d) && weather.isWarm(d.plusMonths(HALF_A_YEAR)));
  }

  private static double lying(String factor, LocalDate day, List<Stay> stays) {
    return stays.stream()
        .filter(s -> s.isThereOn(day))
        .mapToDouble(
            s ->
                s.count()
                    * Allometry.named(factor).area(Math.max(Allometry.LIGHTEST, s.weightOn(day))))
        .sum();
  }
}
