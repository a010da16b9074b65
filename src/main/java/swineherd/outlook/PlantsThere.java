package swineherd.outlook;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swineherd.figures.Plant;
import swineherd.figures.Signal;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * Poisonous plants of one grade in a pen with pigs. Those of grade A are always told, the others if
 * pigs are there in the months of their greatest risk.
 *
 * @param pen name of the pen
 * @param deadly whether little of them kills, or the pigs stay longer than they are borne
 * @param come whether pigs are there already
 * @param names of the plants
 * @param details each with its parts and the months in which pigs meet it at its worst
 * @param signs what pigs show that ate of them; empty where no source was seen
 * @param waitDays days after which such a pig may be slaughtered at the earliest, the longest of
 *     all; 0 where none is published
 * @param by first day on which pigs are there, or today
 */
public record PlantsThere(
    String pen,
    boolean deadly,
    boolean come,
    String names,
    String details,
    String signs,
    int waitDays,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Course> courses) {
    boolean southern = new Climate(setup.place()).isSouthern();
    List<Outlook> all = new ArrayList<>();
    for (PenStays in : PenStays.of(setup, courses)) {
      Pen pen = in.pen();
      List<Stay> there = in.stays();
      if (pen.plants() == null) {
        continue;
      }
      List<Meeting> meetings =
          pen.plants().stream()
              .flatMap(name -> Plant.called(name).stream())
              .distinct()
              .map(plant -> Meeting.of(plant, there, southern))
              .toList();
      Grounds grounds = Grounds.of(in.path(), "plants");
      for (boolean deadly : new boolean[] {true, false}) {
        List<Meeting> these =
            meetings.stream()
                .filter(m -> m.deadly == deadly && (deadly || !m.months.isEmpty()))
                .toList();
        if (!these.isEmpty()) {
          all.add(of(pen.name(), deadly, these, Stay.first(there), setup.checkOn(), grounds));
        }
      }
    }
    return all;
  }

  private static PlantsThere of(
      String pen,
      boolean deadly,
      List<Meeting> these,
      LocalDate first,
      LocalDate today,
      Grounds grounds) {
    return new PlantsThere(
        pen,
        deadly,
        !first.isAfter(today),
        these.stream().map(m -> m.plant.name()).collect(Collectors.joining(", ")),
        these.stream().map(Meeting::words).collect(Collectors.joining("; ")),
        these.stream()
            .map(m -> m.plant.shows())
            .filter(s -> !s.isEmpty())
            .distinct()
            .collect(Collectors.joining("; ")),
        these.stream().mapToInt(m -> m.plant.withholdDays().orElse(0)).max().orElse(0),
        first,
        grounds.list());
  }

  /**
   * A plant and the months of its greatest risk in which pigs are there, from the first on.
   *
   * @param deadly whether little of it kills, or they stay longer than it is borne
   */
  private record Meeting(Plant plant, List<Month> months, boolean deadly) {
    static Meeting of(Plant plant, List<Stay> stays, boolean southern) {
      List<Month> months =
          stays.stream()
              .flatMap(
                  s ->
                      Stream.iterate(
                          s.from().withDayOfMonth(1),
                          d -> !d.isAfter(s.to()),
                          d -> d.plusMonths(1)))
              .sorted(Comparator.naturalOrder())
              .map(LocalDate::getMonth)
              .distinct()
              .filter(m -> plant.isSeason(m, southern))
              .toList();
      long longest =
          stays.stream().mapToLong(s -> s.from().until(s.to(), ChronoUnit.DAYS)).max().orElse(0);
      return new Meeting(plant, months, plant.exposure((double) longest) == Signal.RED);
    }

    String words() {
      String when =
          plant.months().size() == Month.values().length
              ? "in any month"
              : months.isEmpty()
                  ? "out of its worst season while they are there"
                  : "worst in "
                      + months.stream()
                          .map(m -> m.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
                          .collect(Collectors.joining(", "));
      return plant.name() + " (" + plant.parts() + "), " + when;
    }
  }
}
