package swineherd.outlook.sheet;

import static swineherd.outlook.sheet.Figure.kg;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import swineherd.figures.Band;
import swineherd.figures.DailyGain;
import swineherd.figures.DateBand;
import swineherd.figures.Growth;
import swineherd.figures.GrowthFactors;
import swineherd.figures.Reweighing;
import swineherd.figures.Spread;
import swineherd.figures.WeanerPurchase;
import swineherd.figures.Weighing;
import swineherd.outlook.Climate;
import swineherd.outlook.Course;

/** What a group will weigh and when it is finished. */
final class GrowthSection {
  private static final int STEP = 28;
  private static final int MOST_STEPS = 20;

  private final Pigs pigs;
  private final Course course;
  private final Climate climate;
  private final Rows rows;

  private GrowthSection(Pigs pigs, Climate climate) {
    this.pigs = pigs;
    this.course = pigs.course();
    this.climate = climate;
    this.rows = pigs.rows("growth", "Growth");
  }

  static Section of(Pigs pigs, Climate climate) {
    GrowthSection section = new GrowthSection(pigs, climate);
    if (pigs.course() != null) {
      section.write();
    }
    return section.rows.section();
  }

  private void write() {
    rows.add("class", "Grow as", row -> Figure.words(course.growthClass().name()));
    offer();
    weights();
    finish();
    set();
    rows.add(
        "spread",
        "From the lightest to the heaviest then",
        row -> {
          row.rests("tolosa-2021");
          return pigs.count() == 1 ? null : kg(Spread.pigsKg(pigs.endWeight()));
        });
    gains();
    course.weighings().forEach(this::weighed);
    nextWeighing();
    frost();
  }

  /** How a bought weaner stands for its age. */
  private void offer() {
    if (course.born() == null || pigs.group().arrivalWeight() == null) {
      return;
    }
    double weeks = course.ageOn(course.arrives()) / 7.0;
    double weight = pigs.group().arrivalWeight();
    rows.add(
        "for-its-age",
        "Usual at {age}",
        row -> {
          row.with("age", weeks(Math.round(weeks))).with("weight", kg(weight));
          WeanerPurchase.Offer offer = WeanerPurchase.offer(weeks, weight, course.growthClass());
          Band usual = WeanerPurchase.usualKg(weeks, course.growthClass());
          row.note("{weight} is " + offer.name().toLowerCase(Locale.ROOT).replace('_', ' '));
          return kg(usual);
        });
  }

  private void weights() {
    for (LocalDate day : steps()) {
      boolean aged = course.born() != null;
      rows.add(
          "weight",
          aged ? "{day}, {age} old" : "{day}",
          row -> {
            row.with("day", new Figure.Day(day));
            if (aged) {
              row.with("age", weeks(Math.round(course.ageOn(day) / 7.0)));
            }
            row.rests("wellock-2004");
            return course.foresees(day)
                ? kg(course.weightOn(day))
                : new Figure.Beyond(endOfCurve());
          });
    }
  }

  private List<LocalDate> steps() {
    List<LocalDate> days = new ArrayList<>();
    LocalDate last = pigs.last();
    LocalDate day = course.arrives();
    while (days.size() < MOST_STEPS && (last == null ? course.foresees(day) : day.isBefore(last))) {
      days.add(day);
      day = day.plusDays(STEP);
    }
    if (last != null && (days.isEmpty() || last.isAfter(days.get(days.size() - 1)))) {
      days.add(last);
    }
    return days;
  }

  private void finish() {
    rows.add(
        "finish",
        "Reach {target}",
        row -> {
          row.with("target", kg(course.target())).rests("wellock-2004");
          DateBand finish = course.forecast().datesOf(course.target());
          row.note("{days} after they come; eight in ten fall between")
              .with("days", weeks(Math.round(days(course.arrives(), finish.likely()) / 7.0)));
          return new Figure.Dates(finish);
        });
  }

  private void set() {
    LocalDate day = course.slaughterOn();
    if (day == null) {
      return;
    }
    rows.add(
        "set",
        "On the day set, {day}",
        row -> {
          row.with("day", new Figure.Day(day)).with("target", kg(course.target()));
          if (!course.foresees(day)) {
            return new Figure.Beyond(endOfCurve());
          }
          if (day.isAfter(course.forecast().start().on())) {
            row.note("{chance} that they are still under {target}")
                .with(
                    "chance",
                    new Figure.Chance(course.forecast().chanceNotReached(course.target(), day)));
          }
          return kg(course.weightOn(day));
        });
  }

  private void gains() {
    Growth growth = course.forecast().growth();
    gain("gain-now", "Gain now", pigs.now());
    double fastest = growth.fastestAtKg();
    rows.add(
        "gain-fastest",
        "Gain at the fastest",
        row -> {
          row.with("weight", kg(fastest)).note("at {weight}");
          boolean ahead = fastest < pigs.endWeight() && fastest > pigs.weightOn(pigs.now());
          return ahead ? Figure.kgADay(growth.dailyGain(fastest)) : null;
        });
    if (pigs.last() != null) {
      gain("gain-end", "Gain on the last day", pigs.last());
    }
  }

  private void gain(String key, String name, LocalDate day) {
    rows.add(
        key,
        name,
        row -> {
          if (!course.foresees(day)) {
            return new Figure.Beyond(endOfCurve());
          }
          double weight = pigs.weightOn(day);
          row.with("weight", kg(weight)).note("at {weight}");
          return Figure.kgADay(course.forecast().growth().dailyGain(weight));
        });
  }

  private void weighed(Reweighing weighing) {
    rows.add(
        "weighed",
        "Weighed {day}",
        row -> {
          LocalDate day = weighing.later().on();
          row.with("day", new Figure.Day(day));
          row.with("expected", kg(weighing.before().weightOn(day)));
          row.note("expected {expected}");
          if (weighing.lighter()) {
            row.note("lighter than before: ask the vet, unless one of the weights was wrong");
          } else if (weighing.lagging()) {
            row.note("they lag: look at feed, protein, water, worms, cold, heat and health");
          }
          if (weighing.observedRate().isEmpty()) {
            row.note("too soon after the last weight to tell the rate of growth");
          } else {
            row.note("rate now taken as {rate} of what it was")
                .with("rate", Figure.percent(100 * weighing.rateRatio()));
          }
          return kg(weighing.later().kg());
        });
  }

  private void nextWeighing() {
    rows.add(
        "weigh-again",
        "A weight by tape says most from",
        row -> {
          double last = course.forecast().start().kg();
          double gain = course.forecast().growth().dailyGain(last);
          double gap = DailyGain.shortestUsefulGapDays(last, gain, Weighing.Means.TAPE);
          double least = Math.max(gap, GrowthFactors.likely("reweigh-after"));
          LocalDate day =
              course
                  .forecast()
                  .start()
                  .on()
                  .plusDays((long) Math.ceil(least + course.forecast().checkDays()));
          if (pigs.last() != null && day.isAfter(pigs.last())) {
            return null;
          }
          return day.isAfter(pigs.setup().checkOn()) ? new Figure.Day(day) : Figure.words("now on");
        });
  }

  private void frost() {
    if (!climate.frostKnown() || pigs.last() == null) {
      return;
    }
    rows.add(
        "frost",
        "Still there when frost may come",
        row -> {
          Optional<LocalDate> frost = climate.nextFrost(pigs.now());
          if (frost.isEmpty()) {
            return null;
          }
          row.with("frost", new Figure.Day(frost.get())).rests("mrcc-freeze-dates");
          row.note("hard frost comes before {frost} in one year of ten");
          if (course.slaughterOn() != null) {
            return new Figure.Chance(course.slaughterOn().isBefore(frost.get()) ? 0 : 1);
          }
          return new Figure.Chance(course.stillThereOn(frost.get()));
        });
  }

  private String endOfCurve() {
    return "the growth curve of these pigs is used up to "
        + Math.round(course.forecast().growth().highestKg())
        + " kg";
  }

  static Figure weeks(long weeks) {
    return new Figure.Count((int) weeks, "week", "weeks");
  }

  private static long days(LocalDate from, LocalDate to) {
    return ChronoUnit.DAYS.between(from, to);
  }
}
