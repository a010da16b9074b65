package swineherd.outlook;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import swineherd.figures.Daylight;
import swineherd.figures.Hemisphere;
import swineherd.rulebook.Table;
import swineherd.setup.Country;
import swineherd.setup.Setup;
import swineherd.setup.Shelter;

/**
 * Pigs that live in a building while the day is too short for the law on light. There is one for
 * each pen in a barn, in a country whose law asks for hours of light, where pigs are there on the
 * shortest day and that is shorter.
 *
 * @param pen name of the pen
 * @param day hours from sunrise to sunset on the shortest day
 * @param hours of light that the law asks for
 * @param lux how bright
 * @param by day by which the lamps are to burn, not before the day of the check
 */
public record WinterDark(
    String pen, double day, int hours, int lux, LocalDate by, List<String> grounds)
    implements Outlook {

  static Optional<WinterDark> of(
      Setup setup, int index, WinterPen pen, List<WinterPen.Winterer> winterers, Hemisphere half) {
    Double latitude = setup.place().latitude();
    Country country = setup.place().country();
    boolean barn = setup.pens().get(index).shelter().kind() == Shelter.Kind.BARN;
    if (latitude == null || country == null || !barn || row(country) == null) {
      return Optional.empty();
    }
    Table.Row law = Table.named("light-limits").row(row(country));
    LocalDate shortest = shortest(winterers.get(0).stay(), half);
    double day = Daylight.hours(latitude, shortest);
    boolean there =
        winterers.stream()
            .anyMatch(
                w ->
                    !w.stay().firstDay().isAfter(shortest)
                        && (w.course().end() == null || w.course().end().isAfter(shortest)));
    if (!there || day >= law.number("hours")) {
      return Optional.empty();
    }
    return Optional.of(
        new WinterDark(
            pen.pen(),
            day,
            (int) law.number("hours"),
            (int) law.number("lux"),
            pen.testBy(),
            new Grounds()
                .and(winterers.get(0).stay().grounds())
                .and("place", "latitude", "country")
                .and("pens[" + index + "].shelter", "kind")
                .list()));
  }

  /** The shortest day of that winter, within a day. */
  private static LocalDate shortest(WinterStay stay, Hemisphere half) {
    LocalDate midwinter = stay.season().midwinter();
    Month month = half == Hemisphere.NORTH ? Month.DECEMBER : Month.JUNE;
    LocalDate day = LocalDate.of(midwinter.getYear(), month, 21);
    return day.isAfter(midwinter.plusDays(60)) ? day.minusYears(1) : day;
  }

  /** Row of {@code light-limits}; null where no law is known. */
  private static String row(Country country) {
    if (country == Country.GERMANY) {
      return "germany";
    }
    if (country.isUnitedKingdom()) {
      return "england";
    }
    return country.isEuropeanUnion() ? "eu" : null;
  }
}
