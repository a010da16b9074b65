package swineherd.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swineherd.figures.Band;
import swineherd.outlook.HaulToSlaughter;
import swineherd.outlook.HomeKill;
import swineherd.outlook.SlaughterPlan;
import swineherd.outlook.SlaughterReadiness;
import swineherd.outlook.SlaughterReadiness.Verdict;
import swineherd.outlook.TaintRisk;
import swineherd.outlook.Treated;
import swineherd.outlook.sheet.Figure;
import swineherd.setup.Feed;
import swineherd.setup.Group;
import swineherd.units.Dates;
import swineherd.units.Dimension;
import swineherd.units.Display;

/** How a group stands before its slaughter, and what that hangs on, in words. */
final class SlaughterWords {
  private static final String IN_FEED =
      "there is one in the feed; its days begin with the last day they get it";

  private final SlaughterView view;
  private final FigureWording figures;

  SlaughterWords(SlaughterView view) {
    this.view = view;
    this.figures = new FigureWording(view.setup().units());
  }

  static String verdict(SlaughterReadiness ready) {
    String words =
        switch (ready.verdict()) {
          case READY -> ready.day() == null ? "ready" : "ready for that day";
          case NOT_YET -> "not yet";
          case TOO_LATE -> "too late";
          case WEIGHT_NOT_KNOWN -> "nothing noted forbids it; their weight is not known";
        };
    return Wording.capital(ready.pigs()) + ": " + words + ".";
  }

  static String days(SlaughterReadiness ready) {
    StringBuilder words = new StringBuilder();
    words.append(
        ready.day() == null
            ? "No day is set. "
            : "The day set is " + Dates.words(ready.day()) + ". ");
    if (ready.blocked()) {
      return words
          .append("No earliest day can be told until the days of a medicine are known.")
          .toString();
    }
    words.append(
        ready.ill() || ready.tooHot()
            ? "What is told below comes first; by medicine and standstill the earliest is "
            : "The earliest that nothing noted forbids is ");
    words.append(today(ready, ready.earliest()));
    LocalDate fits = ready.readyOn();
    if (fits != null && !fits.equals(ready.earliest()) && ready.verdict() != Verdict.TOO_LATE) {
      words.append("; with their weight likely ").append(Dates.words(fits));
    }
    return words.append('.').toString();
  }

  private static String today(SlaughterReadiness ready, LocalDate day) {
    return day.equals(ready.today()) ? "today" : Dates.words(day);
  }

  /** Each thing that it hangs on, the first first. */
  Map<String, String> why(SlaughterReadiness ready) {
    Map<String, String> why = new LinkedHashMap<>();
    why.put("Medicines", medicines(ready));
    if (ready.ill()) {
      why.put("Health", "something is noted: none goes before a vet has said it is fit");
    }
    if (ready.leaveOn() != null) {
      why.put(
          "Standstill",
          "no pig may leave before "
              + Dates.words(ready.leaveOn())
              + "; ask whether straight to slaughter is exempt");
    }
    if (ready.careUntil() != null) {
      why.put("Own care", "by the law there not at home before " + Dates.words(ready.careUntil()));
    }
    taint(ready).ifPresent(words -> why.put("Taint", words));
    why.put("Weight", weight(ready));
    weather(ready).ifPresent(words -> why.put("Weather", words));
    why.put("Place", place(ready));
    return why;
  }

  private String medicines(SlaughterReadiness ready) {
    List<Treated> given =
        view.all(Treated.class).stream().filter(t -> t.pigs().equals(ready.pigs())).toList();
    boolean inFeed = view.setup().feed().madeFor() == Feed.MadeFor.MEDICATED;
    if (given.isEmpty() && inFeed) {
      return IN_FEED;
    }
    if (given.isEmpty()) {
      return "none noted; if any was given, its withdrawal counts";
    }
    StringBuilder words = new StringBuilder();
    for (Treated each : given) {
      words.append(words.isEmpty() ? "" : "; ").append(each.given());
      if (each.active() == null && each.lastDose() != null) {
        words.append(" on ").append(Dates.words(each.lastDose()));
      }
      words.append(each.pig() == null ? ": " : ", pig " + each.pig() + " alone: ");
      if (each.clearOn() == null) {
        words.append(
            each.mayReach() ? "no date can be told, see below" : "no date noted, and long ago");
      } else if (ready.blocked() && each.running()) {
        words.append("not over yet");
      } else {
        words
            .append(
                !each.clearOn().isAfter(ready.today())
                    ? "over since "
                    : each.pig() == null ? "they may go from " : "it may go from ")
            .append(Dates.words(each.clearOn()));
      }
    }
    String alone = given.get(0).each();
    return words + (inFeed ? "; " + IN_FEED : "") + (alone.isEmpty() ? "" : ". " + alone);
  }

  private Optional<String> taint(SlaughterReadiness ready) {
    if (ready.castrationClearOn() != null) {
      return Optional.of("castrated late; not before " + Dates.words(ready.castrationClearOn()));
    }
    if (ready.vaccineFrom() != null) {
      return Optional.of(
          "vaccinated: from "
              + Dates.words(ready.vaccineFrom())
              + ", and the effect lasts until about "
              + Dates.words(ready.vaccineUntil()));
    }
    return view.first(TaintRisk.class, t -> t.pigs().equals(ready.pigs()))
        .map(
            risk ->
                (risk.males() == null ? "males not known; if entire, " : "males not castrated, ")
                    + "the risk is "
                    + risk.className());
  }

  private String weight(SlaughterReadiness ready) {
    if (ready.weight() == null) {
      return "not known; say when they came and what they weighed, or tape one";
    }
    Band kg = ready.told();
    String then =
        ready.least()
            + Display.band(kg.low(), kg.likely(), kg.high(), Dimension.MASS, view.setup().units());
    String when = ready.day() == null ? " today" : " on " + Dates.words(ready.day());
    String target = mass(ready.target());
    String words = then + when + "; target " + target;
    if (ready.isHeavy()) {
      return words + ": over " + mass(ready.tooHeavyOver()) + ", kept too long";
    }
    if (ready.finish() == null && ready.atLeast()) {
      return words + "; more than that nobody can tell, tape one";
    }
    if (ready.finish() == null) {
      return words + ", farther off than their growth is known";
    }
    if (!ready.isLight()) {
      return words
          + (ready.tooHeavyFrom() == null
              ? ""
              : ", too heavy from about " + Dates.words(ready.tooHeavyFrom()));
    }
    return words + ", likely reached " + figures.words(new Figure.Dates(ready.finish()));
  }

  private String mass(double kg) {
    return Display.amount(kg, Dimension.MASS, view.setup().units());
  }

  private Optional<String> weather(SlaughterReadiness ready) {
    return view.first(HaulToSlaughter.class, h -> h.pigs().equals(ready.pigs()))
        .filter(h -> h.haul() != null)
        .map(
            h ->
                Display.amount(h.air(), Dimension.TEMPERATURE, view.setup().units())
                    + " forecast: "
                    + switch (h.haul()) {
                      case FIT -> "fit for the road";
                      case COLD -> "dry straw, no wind";
                      case EARLY -> "load before eight in the morning";
                      case POSTPONE -> "do not load them";
                    });
  }

  private String place(SlaughterReadiness ready) {
    Group group = view.group(ready);
    if (group.slaughterAt() == Group.SlaughterAt.HOME) {
      return "at home, by a trained slaughterer";
    }
    if (Boolean.TRUE.equals(group.booked())) {
      return ready.day() == null || ready.verdict() == Verdict.READY
          ? "booked"
          : "booked; if the day moves, tell them now";
    }
    return ready.bookBy() == null
        ? "not booked"
        : "not booked; book by " + today(ready, ready.bookBy());
  }

  static String planHeading(SlaughterPlan plan) {
    return "Day by day to "
        + Dates.words(plan.day())
        + (plan.set() ? "" : ", the first day that fits");
  }

  /**
   * What the law there says, in sentences; where it is not known here, what to ask.
   *
   * @param home whether to tell who may slaughter at home and who may eat it
   * @param sale whether to tell what a sale asks for
   */
  static List<String> law(HomeKill there, boolean home, boolean sale) {
    List<String> law = new ArrayList<>();
    if (!home && !sale) {
      return law;
    }
    if (home) {
      law.add("Slaughter at home: " + there.law().who() + ".");
      law.add("The meat then: " + there.law().meat() + ".");
    }
    if (sale) {
      law.add("To sell: " + there.law().sale() + ".");
    }
    law.add(there.rests());
    return law;
  }
}
