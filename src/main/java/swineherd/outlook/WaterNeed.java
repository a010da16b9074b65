package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Water;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * What the pigs of a pen must have to drink, all of them together. There is one for each pen in
 * which pigs are or will be.
 *
 * @param pen name of the pen
 * @param come whether pigs are there already; taken so where the day is not known
 * @param now on their first day there from now on, no warmer than 22 degC, L a day
 * @param end when they drink most on such a day, L a day
 * @param most on the hottest day that may come while they are there, L a day
 * @param plan to lay on, store or carry for that day, spill counted, L a day
 * @param fills times a day that the trough must be filled on that day; null if what it holds is not
 *     known
 * @param drinkers nipples or bowls for them at their heaviest
 * @param likelyDry how likely it is that pigs go short by the number of drinkers there: a single
 *     one may block, and 20 pigs are the most for one that gives enough ({@code sac-1998});
 *     judgement
 * @param weight of the heaviest then, kg
 * @param slowFrom first day on which the flow of a drinker is too little for their weight; null if
 *     it never is, or is not known
 * @param slowAt their weight on that day, kg; null if there is none
 * @param leastFlow the least that will do at that weight, L/min; null if there is none
 * @param goodFlow what to set at that weight, L/min; null if there is none
 * @param laterFlow what to set when they are heaviest, L/min
 * @param warm whether they are there in the warm months
 * @param by when it should be ready
 * @param assumed what was not said and how it was taken
 */
public record WaterNeed(
    String pen,
    boolean come,
    double now,
    double end,
    double most,
    double plan,
    Integer fills,
    int drinkers,
    double likelyDry,
    double weight,
    LocalDate slowFrom,
    Double slowAt,
    Double leastFlow,
    Double goodFlow,
    double laterFlow,
    boolean warm,
    LocalDate by,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  /** Up to here pigs drink no more in warmer air, degC. */
  private static final double MILD = 22;

  private static final int STEP_DAYS = 7;
  private static final int MOST_TO_ONE = 20;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    PenStays.of(setup, courses).forEach(in -> all.add(new Thirst(setup, in).need()));
    return all;
  }

  /** Goes through the weeks of a pen. */
  private static final class Thirst {
    private final Setup setup;
    private final PenStays in;
    private final Pen pen;
    private final List<Stay> stays;
    private final Weather weather;
    private final LocalDate first;

    private double end;
    private double most;
    private double heaviest;
    private boolean warm;
    private LocalDate slowFrom;
    private double slowAt;

    Thirst(Setup setup, PenStays in) {
      this.setup = setup;
      this.in = in;
      this.pen = in.pen();
      this.stays = in.stays();
      this.weather = new Weather(setup.place());
      this.first = Stay.first(stays);
    }

    WaterNeed need() {
      for (Stay stay : stays) {
        for (LocalDate d = stay.from(); d.isBefore(stay.to()); d = d.plusDays(STEP_DAYS)) {
          look(stay, d);
        }
        look(stay, stay.to());
      }
      boolean come = !first.isAfter(setup.checkOn());
      Double volume = pen.water().volume();
      boolean slow = slowFrom != null;
      Grounds grounds = Grounds.of(in.path(), "water.kind");
      stays.forEach(s -> grounds.and(s.grounds().list()));
      stays.stream()
          .filter(s -> s.group().arrives() == null)
          .forEach(s -> grounds.and(s.path(), "arrives"));
      return new WaterNeed(
          pen.name(),
          come,
          on(first, MILD),
          end,
          most,
          Water.supply(most),
          volume == null ? null : (int) Math.ceil(most / volume),
          Water.drinkers(in.count(), heaviest),
          likelyDry(),
          heaviest,
          slowFrom,
          slow ? slowAt : null,
          slow ? Water.flow(slowAt).low() : null,
          slow ? Water.flow(slowAt).likely() : null,
          Water.flow(heaviest).likely(),
          warm,
          Stay.readyBy(stays, setup.checkOn()),
          assumed(),
          grounds.and("place", "hottestMonth").list());
    }

    private void look(Stay stay, LocalDate day) {
      double weight = stay.weightOn(day);
      heaviest = Math.max(heaviest, weight);
      warm = warm || weather.isWarm(day);
      end = Math.max(end, on(day, MILD));
      most = Math.max(most, on(day, weather.hotDay(day)));
      Double flow = pen.water().flow();
      boolean earlier = slowFrom == null || day.isBefore(slowFrom);
      if (flow != null && flow < Water.flow(weight).low() && earlier) {
        slowFrom = day;
        slowAt = weight;
      }
    }

    /** What all pigs of the pen drink on a day, L. */
    private double on(LocalDate day, double air) {
      return stays.stream()
          .filter(s -> s.isThereOn(day))
          .mapToDouble(s -> s.count() * DailyFeed.of(s).drinksOn(day, air))
          .sum();
    }

    private double likelyDry() {
      Integer there = pen.water().drinkers();
      boolean few = there == null || there < 2 || in.count() > MOST_TO_ONE * there;
      return few || slowFrom != null ? 0.35 : 0.1;
    }

    private List<String> assumed() {
      List<String> assumed = new ArrayList<>();
      if (!in.counted()) {
        assumed.add("number of pigs not said: reckoned for one");
      }
      if (warm && setup.place().hottestMonth() == null) {
        assumed.add("summer not known: reckoned with a day of 35 C");
      }
      stays.stream()
          .filter(s -> s.course() == null)
          .findFirst()
          .ifPresent(s -> assumed.add("growth not known: reckoned at the target weight"));
      return List.copyOf(assumed);
    }
  }
}
