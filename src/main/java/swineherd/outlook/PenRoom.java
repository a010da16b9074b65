package swineherd.outlook;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import swineherd.figures.Allometry;
import swineherd.figures.Space;
import swineherd.setup.Country;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * Whether a pen has floor enough for its pigs at the weight they reach in it. There is one for each
 * pen in which pigs are or will be. All areas are m2 for all pigs of the pen together, when they
 * need most.
 *
 * @param pen name of the pen
 * @param pigs in it when they need most
 * @param weight of the heaviest then, kg
 * @param area of the pen; null if it is not known
 * @param floor whether it is as small as floors are, so that enough of it is worth a word
 * @param law least by law; 0 if none is known for the country
 * @param least below it growth and welfare suffer, or the law is broken
 * @param roomy above it all can lie flat, and the country's code is kept
 * @param target what to build: bed, dunging place and feeding place
 * @param fits pigs of that weight for which the area is not too small
 * @param verdict how the pen stands
 * @param from first day on which it stands so; null where there is nothing to complain of, or
 *     growth is not known
 * @param by when something should be done: a fortnight before that day, or today
 */
public record PenRoom(
    String pen,
    int pigs,
    double weight,
    Double area,
    boolean floor,
    double law,
    double least,
    double roomy,
    double target,
    int fits,
    Verdict verdict,
    LocalDate from,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  /** How a pen stands, worst first. */
  public enum Verdict {
    /** Less than a law that is known for the country. */
    BELOW_LAW,
    /** Growth and welfare suffer. */
    CROWDED,
    /** Not all can lie flat, or less than the country's code asks for. */
    TIGHT,
    ROOM,
    /** Its area or the number of pigs was not said. */
    UNKNOWN
  }

  /** Floors are smaller than this for each pig, m2; what is larger is earth. */
  private static final double LARGEST_FLOOR = 10;

  private static final int LEAD_DAYS = 14;
  private static final int STEP_DAYS = 7;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    PenStays.of(setup, courses).forEach(in -> all.add(of(setup, in)));
    return all;
  }

  private static PenRoom of(Setup setup, PenStays in) {
    Pen pen = in.pen();
    List<Stay> stays = in.stays();
    Need most = null;
    for (LocalDate day : days(stays)) {
      Need need = Need.on(day, stays, setup.place().country());
      if (need.pigs > 0 && (most == null || need.target > most.target)) {
        most = need;
      }
    }
    Verdict verdict = verdict(pen.area(), most, in.counted());
    LocalDate from = firstDay(verdict, pen.area(), stays, setup.place().country());
    LocalDate lead = (from == null ? Stay.first(stays) : from).minusDays(LEAD_DAYS);
    boolean growthKnown = stays.stream().allMatch(s -> s.course() != null);
    Grounds grounds = Grounds.of(in.path(), "area");
    stays.forEach(s -> grounds.and(s.grounds().list()));
    return new PenRoom(
        pen.name(),
        most.pigs,
        most.heaviest,
        pen.area(),
        pen.area() != null && pen.area() < LARGEST_FLOOR * most.pigs,
        most.law,
        most.least(),
        most.roomy,
        most.target,
        pen.area() == null ? 0 : (int) (pen.area() / (most.least() / most.pigs)),
        verdict,
        growthKnown ? from : null,
        lead.isBefore(setup.checkOn()) ? setup.checkOn() : lead,
        grounds.and("place", "country").list());
  }

  /** Without the number of pigs it is reckoned for one, which can be bad news but never good. */
  private static Verdict verdict(Double area, Need most, boolean counted) {
    if (area == null) {
      return Verdict.UNKNOWN;
    }
    if (area < most.law) {
      return Verdict.BELOW_LAW;
    }
    if (area < most.crowded) {
      return Verdict.CROWDED;
    }
    if (!counted) {
      return Verdict.UNKNOWN;
    }
    return area < most.roomy ? Verdict.TIGHT : Verdict.ROOM;
  }

  private static LocalDate firstDay(
      Verdict verdict, Double area, List<Stay> stays, Country country) {
    ToDoubleFunction<Need> line =
        switch (verdict) {
          case BELOW_LAW -> n -> n.law;
          case CROWDED -> n -> n.crowded;
          case TIGHT -> n -> n.roomy;
          case ROOM, UNKNOWN -> n -> 0;
        };
    if (area == null) {
      return null;
    }
    for (LocalDate day : days(stays)) {
      if (area < line.applyAsDouble(Need.on(day, stays, country))) {
        LocalDate first = day;
        for (int i = 1; i < STEP_DAYS; i++) {
          LocalDate before = day.minusDays(i);
          if (area < line.applyAsDouble(Need.on(before, stays, country))) {
            first = before;
          }
        }
        return first;
      }
    }
    return null;
  }

  /** Every seventh day of each stay, and the last, in their order. */
  private static List<LocalDate> days(List<Stay> stays) {
    return stays.stream()
        .flatMap(
            s ->
                Stream.concat(
                    s.from().datesUntil(s.to(), Period.ofDays(STEP_DAYS)), Stream.of(s.to())))
        .distinct()
        .sorted()
        .toList();
  }

  /** What all pigs of the pen need on a day, m2. */
  private record Need(
      int pigs, double heaviest, double law, double crowded, double roomy, double target) {

    static Need on(LocalDate day, List<Stay> stays, Country country) {
      Need all = new Need(0, 0, 0, 0, 0, 0);
      for (Stay stay : stays) {
        if (stay.isThereOn(day)) {
          all = all.and(stay.count(), stay.weightOn(day), country);
        }
      }
      return all.pigs == 1 ? all.alone(country) : all;
    }

    private Need and(int more, double kg, Country country) {
      double weight = Math.max(Allometry.LIGHTEST, kg);
      Space.Pen each = Space.pen(country, 1, 1, weight);
      return new Need(
          pigs + more,
          Math.max(heaviest, kg),
          law + more * each.law().orElse(0),
          crowded + more * each.crowded(),
          roomy + more * Math.max(each.roomy(), each.code().orElse(0)),
          target + more * each.target());
    }

    /** A pig kept singly must be able to turn round, by law in England. */
    private Need alone(Country country) {
      double single = Space.single(Math.max(Allometry.LIGHTEST, heaviest)).area();
      return new Need(
          pigs,
          heaviest,
          country == Country.ENGLAND ? Math.max(law, single) : law,
          Math.max(crowded, single),
          Math.max(roomy, single),
          Math.max(target, single));
    }

    double least() {
      return Math.max(law, crowded);
    }
  }
}
