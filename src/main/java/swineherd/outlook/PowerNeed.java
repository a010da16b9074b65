package swineherd.outlook;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import swineherd.figures.FencePower;
import swineherd.figures.OutsideDomainException;
import swineherd.setup.Fence;
import swineherd.setup.Place;

/**
 * What battery and solar panel the energizer of a pen needs, where it does not run on the mains. A
 * lead-acid battery is reckoned, and the cold of the nights while pigs are there.
 *
 * @param pen name of the pen
 * @param days without charge that the battery should bear
 * @param ampereHours rated charge for that, Ah at 12 V
 * @param lasts days that theirs lasts; null if its charge is not known
 * @param batteryEnough whether that does; null if it is not known
 * @param watts rated power of the panel for the darkest month of their stay, W; null if there is to
 *     be none, or if the sun of that place is not known
 * @param panelEnough whether theirs does; null if either is not known
 * @param darkest the month of least sun while they are there; null as {@code watts}
 * @param assumed what was not said and how it was taken
 */
public record PowerNeed(
    String pen,
    int days,
    int ampereHours,
    Double lasts,
    Boolean batteryEnough,
    Integer watts,
    Boolean panelEnough,
    Month darkest,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  /** What is known of their battery, as a sentence. */
  public String lasting() {
    if (lasts == null) {
      return "Nobody said how large the battery is.";
    }
    long whole = Math.max(1, (long) Math.floor(lasts));
    return "Theirs lasts " + (whole == 1 ? "a day." : whole + " days.");
  }

  /** Ampere-hours as a figure: small counts would be spelt out. */
  public String chargeWords() {
    return Integer.toString(ampereHours);
  }

  /** Watts as a figure. */
  public String wattsWords() {
    return Integer.toString(watts);
  }

  /** The name of the darkest month. */
  public String darkestWords() {
    return darkest.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  private static final double LEAST_JOULES = 0.01;
  private static final double WARMEST = 25;
  private static final double COLDEST = -20;

  /** Nothing where it runs on the mains, or nobody said on what. */
  static Optional<PowerNeed> of(Occupants pigs, EnergizerNeed energizer) {
    Fence fence = pigs.pen().fence();
    if (fence.power() == null || fence.power() == Fence.Power.MAINS) {
      return Optional.empty();
    }
    List<String> assumed = new ArrayList<>(List.of("a lead-acid battery"));
    if (fence.output() == null) {
      assumed.add("an energizer with the output this fence needs");
    }
    double joules = fence.output() == null ? energizer.joules() : fence.output();
    double amperes = FencePower.current(Math.max(LEAST_JOULES, joules));
    double usable = FencePower.usable("lead-acid") * coldShare(pigs);
    double days = FencePower.reserveDays().low();
    Double lasts =
        fence.battery() == null ? null : FencePower.days(fence.battery(), amperes, usable);
    Month darkest =
        fence.power() == Fence.Power.SOLAR ? darkest(pigs.setup().place(), months(pigs)) : null;
    Integer watts =
        darkest == null
            ? null
            : (int) Math.ceil(FencePower.panel(amperes, sun(pigs.setup().place(), darkest)));
    Grounds grounds =
        Grounds.of(
            "pens[" + pigs.index() + "].fence", "power", "battery", "panel", "output", "length");
    return Optional.of(
        new PowerNeed(
            pigs.pen().name(),
            (int) days,
            (int) Math.ceil(FencePower.battery(amperes, days, usable)),
            lasts,
            lasts == null ? null : lasts >= days,
            watts,
            (watts == null || fence.panel() == null) ? null : fence.panel() >= watts,
            darkest,
            List.copyOf(assumed),
            grounds.and("place", "coldestMonth", "latitude").list()));
  }

  /** Of its rated charge in the coldest nights while they are there; all of it if not known. */
  private static double coldShare(Occupants pigs) {
    Double nights = pigs.setup().place().coldestMonth();
    boolean south = pigs.setup().place().latitude() != null && pigs.setup().place().latitude() < 0;
    boolean winter = months(pigs).stream().anyMatch(m -> m == (south ? Month.JULY : Month.JANUARY));
    return nights == null || !winter
        ? 1
        : FencePower.coldShare(Math.max(COLDEST, Math.min(WARMEST, nights)));
  }

  private static Month darkest(Place place, Set<Month> months) {
    Month darkest = null;
    for (Month month : months) {
      try {
        if (darkest == null || sun(place, month) < sun(place, darkest)) {
          darkest = month;
        }
      } catch (OutsideDomainException e) {
        return null;
      }
    }
    return darkest;
  }

  private static double sun(Place place, Month month) {
    if (place.latitude() == null) {
      throw new OutsideDomainException("latitude not known");
    }
    return FencePower.leastPeakSun(place.latitude(), month).likely();
  }

  /** Those in which pigs are there; all where nobody can say when they go. */
  private static Set<Month> months(Occupants pigs) {
    LocalDate from = pigs.readyBy(0) == null ? pigs.setup().checkOn() : pigs.readyBy(0);
    LocalDate until = pigs.until();
    if (until == null || until.isAfter(from.plusYears(1))) {
      return EnumSet.allOf(Month.class);
    }
    Set<Month> months = EnumSet.of(from.getMonth());
    from.datesUntil(until.isBefore(from) ? from : until).forEach(d -> months.add(d.getMonth()));
    return months;
  }
}
