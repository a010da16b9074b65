package swineherd.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.figures.Band;
import swineherd.outlook.Course;
import swineherd.outlook.Treated;
import swineherd.outlook.WinterStay;
import swineherd.outlook.WormTest;
import swineherd.rulebook.Card;
import swineherd.rulebook.Referral;
import swineherd.setup.Group;
import swineherd.setup.Setup;
import swineherd.units.Dates;
import swineherd.units.Dimension;
import swineherd.units.Display;

/**
 * Everything of a checklist that has a day: what to do by then, and what happens then. What has no
 * day is not in it.
 *
 * @param name what the keeper calls the setup, or else the file it stands in
 * @param checkedOn day of the check
 * @param entries the earliest first
 * @param undated items of the checklist without a day
 */
public record Agenda(String name, LocalDate checkedOn, List<Entry> entries, List<Item> undated) {

  /** Judgement: a tape every four weeks keeps a forecast narrow. */
  private static final int WEIGH_WEEKS = 4;

  /** Whether something is to be done by a day, or happens on it. */
  public enum Kind {
    TASK,
    EVENT
  }

  /**
   * One day in a calendar.
   *
   * @param id of the card, or of the kind of day; with {@code about} it names the entry for good
   * @param about the group or pen; empty if it is about the whole setup
   * @param on the day; a task that is overdue stands on the day of the check
   * @param kind what it is
   * @param topic its topic
   * @param title one line
   * @param text paragraphs: what to do, why, cautions, whom to call
   */
  public record Entry(
      String id, String about, LocalDate on, Kind kind, String topic, String title, String text) {}

  /** The agenda of a checklist. */
  public static Agenda of(Checklist checklist) {
    return new Diary(checklist).agenda();
  }

  /** Whether something that has no day is urgent. */
  public boolean urgentWithoutDay() {
    return undated.stream().anyMatch(i -> i.rank().emergency());
  }

  /** One checklist on its way into an agenda. */
  private static final class Diary {
    private final Checklist checklist;
    private final Setup setup;
    private final Wording wording;
    private final List<Entry> entries = new ArrayList<>();

    Diary(Checklist checklist) {
      this.checklist = checklist;
      this.setup = checklist.file().setup();
      this.wording = new Wording(setup.units());
    }

    Agenda agenda() {
      checklist.items().stream().filter(i -> i.due() != null).forEach(this::item);
      setup.pigs().forEach(this::arrival);
      all(Course.class).forEach(this::course);
      all(Treated.class).filter(t -> t.clearOn() != null && !t.blocked()).forEach(this::withdrawal);
      all(WormTest.class).forEach(this::wormTest);
      all(WinterStay.class)
          .filter(s -> s.frostKnown() && !s.begun() && s.chance() >= 0.1)
          .map(s -> s.frost())
          .distinct()
          .forEach(
              frost ->
                  event(
                      "early-frost",
                      "",
                      frost.early(),
                      "winter",
                      "From here on a hard frost may come.",
                      "In one year of ten the first hard frost has come by now; the usual day is "
                          + Dates.words(frost.usual())
                          + ". Have water, bed and shelter ready."));
      entries.sort(
          Comparator.comparing(Entry::on).thenComparing(Entry::id).thenComparing(Entry::about));
      return new Agenda(
          setup.name() == null ? checklist.file().file() : setup.name(),
          setup.checkOn(),
          List.copyOf(entries),
          checklist.items().stream().filter(i -> i.due() == null).toList());
    }

    private <T> Stream<T> all(Class<T> type) {
      return checklist.outlooks().stream().filter(type::isInstance).map(type::cast);
    }

    private void item(Item item) {
      Card card = item.card();
      List<String> text = new ArrayList<>();
      text.add(wording.fill(card.doIt(), item.advice()));
      text.add("Because: " + wording.fill(card.why(), item.advice()));
      if (card.caution() != null) {
        text.add("Careful: " + wording.fill(card.caution(), item.advice()));
      }
      if (item.referral() != Referral.NONE) {
        text.add(item.referral().words());
      }
      text.add("Rests on: " + TextReport.rests(card));
      add(
          new Entry(
              card.id(),
              item.advice().about(),
              later(item.due(), setup.checkOn()),
              Kind.TASK,
              card.topic(),
              wording.fill(card.heading(), item.advice()),
              paragraphs(text)));
    }

    private void arrival(Group group) {
      if (group.arrives() == null || group.arrives().isBefore(setup.checkOn())) {
        return;
      }
      String count =
          group.count() == null ? "" : ": " + Wording.counted(group.count(), "pig", "pigs");
      event(
          "arrival",
          name(group),
          group.arrives(),
          "arrival",
          Wording.capital(name(group)) + " come" + count + ".",
          "Look through what is to be ready by then: swineherd check.");
    }

    private void course(Course course) {
      Group group = setup.group(course.pigs()).orElseThrow();
      LocalDate end = course.end();
      LocalDate today = setup.checkOn();
      if (course.slaughterOn() != null && !course.slaughterOn().isBefore(today)) {
        String booked =
            group.booked() == null
                ? "Whether the day is booked was not said."
                : group.booked() ? "The day is booked." : "The day is not booked yet.";
        event(
            "slaughter",
            course.pigs(),
            course.slaughterOn(),
            "slaughter",
            Wording.capital(course.pigs()) + " go to slaughter.",
            booked + weight(course, course.slaughterOn()) + band(course) + cleared(course));
      } else if (course.slaughterOn() == null
          && course.finish() != null
          && !course.finish().likely().isBefore(today)) {
        event(
            "finish",
            course.pigs(),
            course.finish().likely(),
            "slaughter",
            "About now "
                + course.pigs()
                + " weigh "
                + Display.amount(course.target(), Dimension.MASS, setup.units())
                + ".",
            "No day is set for slaughter." + band(course) + cleared(course));
      }
      if (end != null) {
        weighings(course, end);
      }
    }

    private void weighings(Course course, LocalDate end) {
      LocalDate last = course.forecast().start().on();
      for (int number = 1; ; number++) {
        LocalDate day = last.plusWeeks((long) number * WEIGH_WEEKS);
        if (!day.isBefore(end)) {
          return;
        }
        if (!day.isBefore(setup.checkOn()) && !day.isBefore(course.arrives())) {
          event(
              "weighing-" + number,
              course.pigs(),
              day,
              "growth",
              "Tape or weigh " + course.pigs() + ".",
              "Write the weight into the diary of the setup and check again: every weight narrows"
                  + " the forecast."
                  + weight(course, day)
                  + " Lighter than that by far: look at feed, water, worms and health.");
        }
      }
    }

    private String weight(Course course, LocalDate day) {
      Band kg = course.weightOn(day);
      return !course.foresees(day)
          ? ""
          : " They are likely to weigh "
              + Display.span(kg.low(), kg.likely(), kg.high(), Dimension.MASS, setup.units())
              + ".";
    }

    private String band(Course course) {
      return course.finish() == null
          ? ""
          : " In eight cases of ten they have "
              + Display.amount(course.target(), Dimension.MASS, setup.units())
              + " between "
              + Dates.words(course.finish().early())
              + " and "
              + Dates.words(course.finish().late())
              + ", most likely about "
              + Dates.words(course.finish().likely())
              + ".";
    }

    /** The caution that stands by every day of slaughter. */
    private String cleared(Course course) {
      boolean treated =
          all(Treated.class).anyMatch(t -> t.pigs().equals(course.pigs()) && t.mayReach());
      return treated
          ? "\n\nCareful: a medicine they were given may still be in the meat then. See the"
              + " checklist; the label and the vet decide."
          : "\n\nCareful: whatever they are given from now on has a withdrawal period; the label and"
              + " the vet decide.";
    }

    private void withdrawal(Treated treated) {
      if (!treated.clearOn().isAfter(setup.checkOn())) {
        return;
      }
      event(
          "withdrawal-end",
          treated.whom() + (treated.active() == null ? "" : " " + treated.active()),
          treated.clearOn(),
          "treatment",
          "First day "
              + treated.whom()
              + " may go, as far as "
              + treated.given()
              + " is concerned.",
          "Last dose "
              + Dates.words(treated.lastDose())
              + ", "
              + Wording.counted(treated.days(), "day", "days")
              + " counted, a day for safety with them."
              + "\n\nCareful: the label and the vet decide, and a longer period always wins.");
    }

    private void wormTest(WormTest test) {
      boolean told =
          entries.stream()
              .anyMatch(e -> e.id().equals("parasites.dung-test") && e.about().equals(test.pigs()));
      if (told || test.due() == null || test.afterSlaughter() || test.testOn() == null) {
        return;
      }
      event(
          "worm-test",
          test.pigs(),
          test.testOn(),
          "parasites",
          "Have the dung of " + test.pigs() + " tested for worms.",
          "Counted from "
              + test.since().words()
              + ", "
              + Dates.words(test.from())
              + ". "
              + test.taken()
              + "\n\nAsk your vet where to send it, and what a finding calls for.");
    }

    private void event(
        String id, String about, LocalDate on, String topic, String title, String text) {
      add(new Entry(id, about, on, Kind.EVENT, topic, title, text));
    }

    /** Two entries of one name would be one in a calendar; the later keeps a number. */
    private void add(Entry entry) {
      long same =
          entries.stream()
              .filter(e -> e.id().equals(entry.id()) && e.about().equals(entry.about()))
              .count();
      entries.add(
          same == 0
              ? entry
              : new Entry(
                  entry.id() + "-" + (same + 1),
                  entry.about(),
                  entry.on(),
                  entry.kind(),
                  entry.topic(),
                  entry.title(),
                  entry.text()));
    }

    private static String name(Group group) {
      return Objects.requireNonNullElse(group.name(), "pigs");
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
      return a.isAfter(b) ? a : b;
    }

    private static String paragraphs(List<String> text) {
      return String.join("\n\n", text);
    }
  }
}
