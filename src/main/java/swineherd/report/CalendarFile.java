package swineherd.report;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import biweekly.parameter.Related;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.property.Status;
import biweekly.property.Trigger;
import biweekly.util.DateTimeComponents;
import biweekly.util.Duration;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Date;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/**
 * An agenda as a calendar of RFC 5545: an event a day, all day, without a time zone.
 *
 * <p>It has no METHOD: with one it would be a message of RFC 5546, which needs an organizer.
 *
 * <p>Importing it again updates what is there. An entry is known by its UID, which is made of the
 * name of the setup, the id and what it is about, and stays when the day or the words change.
 * SEQUENCE, which has to rise, is the minutes since the beginning of 2026 at which the file was
 * written; DTSTAMP and LAST-MODIFIED are that moment. Where an earlier file is replaced, days that
 * were to come and are no longer told are written once more as cancelled.
 */
public final class CalendarFile {
  private static final Instant FIRST = Instant.parse("2026-01-01T00:00:00Z");
  private static final String PRODUCT = "-//swineherd//swineherd 0.1//EN";
  private static final int MOST_OCTETS = 75;
  private static final int SOON_DAYS = 7;

  /** Nine in the morning the day before, and of a week before, and of the day; from midnight. */
  private static final Duration DAY_BEFORE = Duration.parse("-PT15H");

  private static final Duration WEEK_BEFORE = Duration.parse("-P6DT15H");
  private static final Duration THAT_MORNING = Duration.parse("PT9H");

  private final Agenda agenda;
  private final Date now;
  private final int sequence;

  private CalendarFile(Agenda agenda, Instant now) {
    this.agenda = agenda;
    this.now = Date.from(now.truncatedTo(ChronoUnit.SECONDS));
    this.sequence = (int) Math.max(0, ChronoUnit.MINUTES.between(FIRST, now));
  }

  /**
   * The calendar as text, in lines of at most 75 octets that end as the standard asks.
   *
   * @param now when it is written
   */
  public static String of(Agenda agenda, Instant now) {
    CalendarFile file = new CalendarFile(agenda, now);
    return file.text(file.events());
  }

  /**
   * Writes the calendar; an earlier one there is replaced whole, or left as it was.
   *
   * @param now when it is written
   * @throws IOException with a reason to be shown as it is
   */
  public static void write(Agenda agenda, Instant now, Path to) throws IOException {
    CalendarFile file = new CalendarFile(agenda, now);
    ICalendar calendar = file.events();
    if (Files.isRegularFile(to)) {
      file.cancel(calendar, Files.readString(to, StandardCharsets.UTF_8));
    }
    WholeFile.write(file.text(calendar).getBytes(StandardCharsets.UTF_8), to);
  }

  private ICalendar events() {
    ICalendar calendar = new ICalendar();
    calendar.setProductId(PRODUCT);
    calendar.setName("swineherd: " + agenda.name());
    calendar.addExperimentalProperty("X-WR-CALNAME", "swineherd: " + agenda.name());
    agenda.entries().forEach(entry -> calendar.addEvent(event(entry)));
    return calendar;
  }

  private VEvent event(Agenda.Entry entry) {
    VEvent event = new VEvent();
    event.setUid(uid(entry));
    stamp(event);
    event.setDateStart(new DateStart(date(entry.on())));
    event.setDateEnd(new DateEnd(date(entry.on().plusDays(1))));
    event.setSummary(entry.title());
    event.setDescription(entry.text() + "\n\n" + TextReport.FOOTER);
    event.addCategories(entry.topic());
    event.setTransparency(true); // it does not make the day a busy one
    alarms(entry).forEach(before -> event.addAlarm(alarm(before, entry.title())));
    return event;
  }

  private void stamp(VEvent event) {
    event.setDateTimeStamp(now);
    event.setLastModified(now);
    event.setSequence(sequence);
  }

  private String uid(Agenda.Entry entry) {
    String name = String.join("\n", "swineherd", agenda.name(), entry.id(), entry.about());
    return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
  }

  private List<Duration> alarms(Agenda.Entry entry) {
    long days = ChronoUnit.DAYS.between(agenda.checkedOn(), entry.on());
    if (days == 0) {
      return List.of(THAT_MORNING);
    }
    return entry.kind() == Agenda.Kind.TASK && days > SOON_DAYS
        ? List.of(WEEK_BEFORE, DAY_BEFORE)
        : List.of(DAY_BEFORE);
  }

  private static VAlarm alarm(Duration before, String title) {
    return VAlarm.display(new Trigger(before, Related.START), title);
  }

  private static ICalDate date(LocalDate day) {
    return new ICalDate(
        new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()), false);
  }

  /**
   * Adds as cancelled what an earlier file of ours told for a day to come and this one does not.
   */
  private void cancel(ICalendar calendar, String earlier) {
    ICalendar before = Biweekly.parse(earlier).first();
    if (before == null
        || before.getProductId() == null
        || !PRODUCT.equals(before.getProductId().getValue())
        || before.getNames().stream().noneMatch(n -> n.getValue().endsWith(": " + agenda.name()))) {
      return;
    }
    Set<String> told = new HashSet<>();
    calendar.getEvents().forEach(e -> told.add(e.getUid().getValue()));
    for (VEvent event : before.getEvents()) {
      boolean toCome = event.getDateStart() != null && !day(event).isBefore(agenda.checkedOn());
      if (toCome && !told.contains(event.getUid().getValue())) {
        stamp(event);
        event.setStatus(Status.cancelled());
        event.getAlarms().clear();
        calendar.addEvent(event);
      }
    }
  }

  private static LocalDate day(VEvent event) {
    DateTimeComponents day = event.getDateStart().getValue().getRawComponents();
    return LocalDate.of(day.getYear(), day.getMonth(), day.getDate());
  }

  private String text(ICalendar calendar) {
    StringWriter out = new StringWriter();
    try (ICalWriter writer = new ICalWriter(out, ICalVersion.V2_0)) {
      // its own folding counts characters, the standard counts octets
      writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
      writer.write(calendar);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    StringBuilder folded = new StringBuilder();
    out.toString().lines().forEach(line -> fold(line, folded));
    return folded.toString();
  }

  /** RFC 5545, 3.1: no line longer than 75 octets; the rest goes on after a space. */
  private static void fold(String line, StringBuilder out) {
    int octets = 0;
    for (int i = 0; i < line.length(); ) {
      int point = line.codePointAt(i);
      int size = point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
      if (octets + size > MOST_OCTETS) {
        out.append("\r\n ");
        octets = 1;
      }
      out.appendCodePoint(point);
      octets += size;
      i += Character.charCount(point);
    }
    out.append("\r\n");
  }
}
