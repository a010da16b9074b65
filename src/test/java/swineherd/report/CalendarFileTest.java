package swineherd.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.advice.Advisor;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;

/** Calendars by RFC 5545, read back by other code than wrote them. */
class CalendarFileTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
  private static final Instant NOW = Instant.parse("2027-03-01T18:30:15.123Z");

  @TempDir Path folder;

  /** Three weaners to come, one group that was treated; names that need escaping and folding. */
  private static final String SETUP =
      """
      name: "Änderhof; Öd, \\\\ 豚舎"
      checkOn: 2027-07-01
      units: metric
      place: {country: united-states, latitude: 45 N, firstHardFrost: 10 October, coldestMonth: -9 C}
      pens:
        - name: größer Schlag, ganz hinten am Wald beim alten Kirschbaum
          shelter: {kind: three-sided, floorArea: 5 m2, bed: straw}
          water: {kind: nipple, frostProof: "no"}
      pigs:
        - name: réd, ones
          pen: größer Schlag, ganz hinten am Wald beim alten Kirschbaum
          count: 3
          breed: tamworth
          sex: gilts
          arrives: 2027-06-05
          arrivalWeight: 16 kg
          weighedBy: scale
          targetWeight: 100 kg
      feed: {kind: hand-fed}
      diary: [{on: 2027-06-20, pigs: "réd, ones", did: treated, active: ivermectin, route: injected, withdrawal: 28 days}]
      """;

  private static Agenda agenda(String yaml) {
    return Agenda.of(Advisor.advise(SetupReader.read("pigs.yaml", yaml, TODAY)));
  }

  private static Calendar read(String text) {
    try {
      return new CalendarBuilder().build(new StringReader(text));
    } catch (IOException | ParserException e) {
      throw new AssertionError(text, e);
    }
  }

  private static List<VEvent> events(String text) {
    return read(text).<VEvent>getComponents(Component.VEVENT);
  }

  private static String value(VEvent event, String property) {
    return event.getRequiredProperty(property).getValue();
  }

  private static Map<String, String> daysByUid(String text) {
    Map<String, String> days = new TreeMap<>();
    events(text).forEach(e -> days.put(value(e, "UID"), value(e, "DTSTART")));
    return days;
  }

  static List<Path> scenarios() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      return files.filter(f -> f.toString().matches(".*\\.(yaml|json)")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void every_scenario_makes_a_valid_calendar(Path file) {
    SetupFile setup = SetupReader.read(file, TODAY);
    Agenda agenda = Agenda.of(Advisor.advise(setup));
    Calendar calendar = read(CalendarFile.of(agenda, NOW));
    assertThat(calendar.validate().hasErrors()).as("%s", calendar.validate()).isFalse();
    // a method would make it a message, which needs an organizer (RFC 5546, 3.2.1)
    assertThat(calendar.getProperty("METHOD")).isEmpty();
    assertThat(calendar.<VEvent>getComponents(Component.VEVENT))
        .hasSameSizeAs(agenda.entries())
        .extracting(e -> value(e, "UID"))
        .doesNotHaveDuplicates();
  }

  @Test
  void what_was_written_is_read_back() {
    Agenda agenda = agenda(SETUP);
    List<VEvent> events = events(CalendarFile.of(agenda, NOW));
    assertThat(agenda.entries()).hasSizeGreaterThan(10);
    for (int i = 0; i < events.size(); i++) {
      Agenda.Entry entry = agenda.entries().get(i);
      VEvent event = events.get(i);
      assertThat(value(event, "SUMMARY")).isEqualTo(entry.title());
      assertThat(value(event, "DESCRIPTION")).isEqualTo(entry.text() + "\n\n" + TextReport.FOOTER);
      // all day: a date without time or zone, the end left out of it (RFC 5545, 3.6.1)
      assertThat(event.getRequiredProperty("DTSTART").toString()).startsWith("DTSTART;VALUE=DATE:");
      assertThat(value(event, "DTSTART")).isEqualTo(entry.on().toString().replace("-", ""));
      assertThat(value(event, "DTEND"))
          .isEqualTo(entry.on().plusDays(1).toString().replace("-", ""));
      assertThat(value(event, "TRANSP")).isEqualTo("TRANSPARENT");
      assertThat(value(event, "DTSTAMP")).isEqualTo("20270301T183015Z");
      assertThat(event.getAlarms()).isNotEmpty();
    }
    assertThat(agenda.entries())
        .extracting(Agenda.Entry::title)
        .anyMatch(t -> t.contains("größer Schlag, ganz hinten"));
  }

  /** RFC 5545, 3.1: lines of at most 75 octets without the line break, which is CR LF. */
  @Test
  void lines_are_folded_by_octets() {
    String text = CalendarFile.of(agenda(SETUP), NOW);
    assertThat(text).endsWith("END:VCALENDAR\r\n");
    assertThat(text.replace("\r\n", "")).doesNotContain("\r", "\n");
    List<String> lines = List.of(text.split("\r\n"));
    assertThat(lines).allMatch(l -> l.getBytes(StandardCharsets.UTF_8).length <= 75);
    assertThat(lines).anyMatch(l -> l.startsWith(" "));
    // no character is torn in two
    assertThat(text).doesNotContain("\uFFFD");
  }

  @Test
  void the_name_of_the_calendar_is_escaped_and_comes_back() {
    String text = CalendarFile.of(agenda(SETUP), NOW);
    assertThat(text).contains("NAME:swineherd: Änderhof\\; Öd\\, \\\\ 豚舎");
    assertThat(read(text).getRequiredProperty("NAME").getValue())
        .isEqualTo("swineherd: Änderhof; Öd, \\ 豚舎");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Pacific/Kiritimati", "Pacific/Pago_Pago", "America/Sao_Paulo"})
  void a_day_is_that_day_wherever_the_computer_stands(String zone) {
    String here = CalendarFile.of(agenda(SETUP), NOW);
    TimeZone before = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      assertThat(CalendarFile.of(agenda(SETUP), NOW)).isEqualTo(here);
    } finally {
      TimeZone.setDefault(before);
    }
  }

  @Test
  void an_entry_keeps_its_name_from_run_to_run_and_when_its_day_changes() {
    Map<String, String> first = daysByUid(CalendarFile.of(agenda(SETUP), NOW));
    assertThat(daysByUid(CalendarFile.of(agenda(SETUP), NOW.plusSeconds(86_400)))).isEqualTo(first);
    Map<String, String> later =
        daysByUid(CalendarFile.of(agenda(SETUP.replace("10 October", "24 October")), NOW));
    assertThat(later.keySet()).isEqualTo(first.keySet());
    List<String> moved =
        first.keySet().stream().filter(u -> !later.get(u).equals(first.get(u))).toList();
    assertThat(moved).hasSizeGreaterThan(3);
  }

  @Test
  void the_same_items_of_another_setup_are_others() {
    Map<String, String> first = daysByUid(CalendarFile.of(agenda(SETUP), NOW));
    Map<String, String> other =
        daysByUid(CalendarFile.of(agenda(SETUP.replace("Änderhof", "Nebenhof")), NOW));
    assertThat(other.keySet()).doesNotContainAnyElementsOf(first.keySet());
  }

  /** RFC 5546, 2.1.5: of two with one UID that with the higher SEQUENCE counts. */
  @Test
  void a_later_file_counts_for_more() {
    VEvent first = events(CalendarFile.of(agenda(SETUP), NOW)).get(0);
    VEvent next = events(CalendarFile.of(agenda(SETUP), NOW.plusSeconds(60))).get(0);
    assertThat(value(next, "UID")).isEqualTo(value(first, "UID"));
    assertThat(Integer.parseInt(value(next, "SEQUENCE")))
        .isGreaterThan(Integer.parseInt(value(first, "SEQUENCE")));
    assertThat(value(next, "LAST-MODIFIED")).isEqualTo("20270301T183115Z");
  }

  @Test
  void cautions_referral_and_band_stand_in_the_description() {
    List<VEvent> events = events(CalendarFile.of(agenda(SETUP), NOW));
    assertThat(events)
        .extracting(e -> value(e, "SUMMARY") + "\n" + value(e, "DESCRIPTION"))
        .anySatisfy(
            text ->
                assertThat(text)
                    .contains("Make the water safe from frost")
                    .contains("Careful: If they have had none for a day")
                    .contains("Rests on: A code of practice"))
        .anySatisfy(
            text ->
                assertThat(text)
                    .contains("About now réd, ones weigh 100 kg")
                    .containsPattern("In eight cases of ten .* between .* and .* 202[78]"))
        .anySatisfy(
            text ->
                assertThat(text)
                    .contains("First day réd, ones may go, as far as ivermectin")
                    .contains("the label and the vet decide"))
        .anySatisfy(text -> assertThat(text).contains("From here on a hard frost may come"));
  }

  /** A day of withdrawal that ends: 20 June and 28 days, a day more (the project's safety day). */
  @Test
  void a_withdrawal_ends_on_its_day() {
    assertThat(agenda(SETUP).entries())
        .filteredOn(e -> e.id().equals("withdrawal-end"))
        .singleElement()
        .satisfies(e -> assertThat(e.on()).isEqualTo(LocalDate.of(2027, 7, 19)));
  }

  @Test
  void what_has_no_day_is_left_out_and_what_is_overdue_stands_on_the_day_of_the_check() {
    Agenda late = agenda(SETUP.replace("2027-07-01", "2027-10-20"));
    assertThat(late.undated()).isNotEmpty().allMatch(i -> i.due() == null);
    assertThat(late.entries()).allMatch(e -> !e.on().isBefore(LocalDate.of(2027, 10, 20)));
    assertThat(late.entries()).anyMatch(e -> e.id().equals("winter.water-now"));
  }

  @Test
  void no_pigs_make_an_empty_calendar_that_can_still_be_read() {
    assertThat(events(CalendarFile.of(agenda("name: nobody\ncheckOn: 2027-01-01\n"), NOW)))
        .isEmpty();
  }

  // -------------------------------------------------------------------------------- in a file

  @Test
  void a_file_is_replaced_whole_and_what_no_longer_holds_is_cancelled() throws IOException {
    Path file = folder.resolve("pigs.ics");
    CalendarFile.write(agenda(SETUP), NOW, file);
    Map<String, String> before = daysByUid(Files.readString(file));
    String safe = SETUP.replace("frostProof: \"no\"", "frostProof: \"yes\"");
    CalendarFile.write(agenda(safe), NOW.plusSeconds(600), file);
    List<VEvent> events = events(Files.readString(file));
    List<VEvent> cancelled = new ArrayList<>();
    for (VEvent event : events) {
      if (event.getProperty("STATUS").isPresent()) {
        cancelled.add(event);
      }
    }
    assertThat(cancelled)
        .singleElement()
        .satisfies(
            e -> {
              assertThat(value(e, "STATUS")).isEqualTo("CANCELLED");
              assertThat(value(e, "SUMMARY")).isEqualTo("Make the water safe from frost.");
              assertThat(before).containsEntry(value(e, "UID"), value(e, "DTSTART"));
              assertThat(e.getAlarms()).isEmpty();
              assertThat(value(e, "SEQUENCE")).isEqualTo(value(events.get(0), "SEQUENCE"));
            });
    assertThat(events).hasSameSizeAs(before.keySet());
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(file);
    }
  }

  @Test
  void a_calendar_of_something_else_is_not_taken_for_ours() throws IOException {
    Path file = folder.resolve("pigs.ics");
    Files.writeString(
        file,
        """
        BEGIN:VCALENDAR
        VERSION:2.0
        PRODID:-//somebody//EN
        BEGIN:VEVENT
        UID:1
        DTSTAMP:20270101T000000Z
        DTSTART;VALUE=DATE:20300101
        END:VEVENT
        END:VCALENDAR
        """);
    CalendarFile.write(agenda(SETUP), NOW, file);
    assertThat(Files.readString(file)).isEqualTo(CalendarFile.of(agenda(SETUP), NOW));
    Files.writeString(file, "no calendar at all");
    CalendarFile.write(agenda(SETUP), NOW, file);
    assertThat(Files.readString(file)).isEqualTo(CalendarFile.of(agenda(SETUP), NOW));
  }

  @Test
  void where_it_cannot_be_written_it_says_why() {
    assertThatIOException()
        .isThrownBy(() -> CalendarFile.write(agenda(SETUP), NOW, folder.resolve("no/pigs.ics")))
        .withMessage("there is no such folder");
    assertThatIOException()
        .isThrownBy(() -> CalendarFile.write(agenda(SETUP), NOW, folder))
        .withMessage("it is a folder");
  }
}
