package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swineherd.figures.DayRange;
import swineherd.figures.Weaner;
import swineherd.rulebook.Table;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * Pigs that come, or came within the quarantine, to a place where other pigs are.
 *
 * @param pigs name of the group that comes
 * @param residents names of the groups that are there, in words
 * @param samePen whether one of them is meant for the same pen; so taken where a pen was not said
 * @param here whether they have come
 * @param from what their source means, a sentence
 * @param arrives day of arrival; null if not known
 * @param days days of quarantine
 * @param least the least of it, days
 * @param until day on which it ends; null if the arrival is not known
 * @param chance that they bring or meet something, 0 to 1 (judgement)
 * @param leaver who leaves too soon after that to be mixed at all; null if nobody does
 * @param leaves the day that group leaves; null with {@code leaver}
 * @param weight of one of them on {@code until}, kg; 0 if it is not known
 * @param residentWeight the same of the residents, of the heaviest group
 * @param together number of pigs in one pen then
 * @param dayOneFights share of the fights of five days that fall on the first, percent
 */
public record Newcomers(
    String pigs,
    String residents,
    boolean samePen,
    boolean here,
    String from,
    LocalDate arrives,
    double days,
    double least,
    LocalDate until,
    double chance,
    String leaver,
    LocalDate leaves,
    double weight,
    double residentWeight,
    int together,
    double dayOneFights,
    List<String> grounds)
    implements Outlook {

  /** No mixing within three weeks of slaughter (judgement). */
  private static final int BEFORE_SLAUGHTER = 21;

  /** The quarantines that are running or to come. */
  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    Whereabouts whereabouts = new Whereabouts(setup);
    List<Stay> stays = Stay.of(setup, courses);
    DayRange quarantine = Weaner.quarantineDays();
    for (Stay stay : stays) {
      Group group = stay.group();
      List<Stay> there =
          stays.stream().filter(s -> whereabouts.isThereBefore(s.group(), group)).toList();
      if (whereabouts.isNew(stay, quarantine.high()) && !there.isEmpty()) {
        all.add(of(stay, there, quarantine, whereabouts.isHere(group)));
      }
    }
    return all;
  }

  private static Newcomers of(Stay stay, List<Stay> there, DayRange quarantine, boolean here) {
    Group group = stay.group();
    List<Stay> mates = there.stream().filter(s -> samePen(s.group(), group)).toList();
    LocalDate until = group.arrives() == null ? null : group.arrives().plusDays(quarantine.high());
    Stay leaver =
        until == null
            ? null
            : Stream.concat(Stream.of(stay), mates.stream())
                .filter(s -> s.group().slaughterOn() != null)
                .filter(s -> s.group().slaughterOn().isBefore(until.plusDays(BEFORE_SLAUGHTER)))
                .min(Comparator.comparing(s -> s.group().slaughterOn()))
                .orElse(null);
    Grounds grounds = Grounds.of(stay.path(), "arrives", "source", "pen");
    there.forEach(s -> grounds.and(s.path(), "arrives", "pen", "slaughterOn"));
    return new Newcomers(
        group.name(),
        there.stream().map(s -> s.group().name()).collect(Collectors.joining(" and ")),
        !mates.isEmpty(),
        here,
        from(group.source()),
        group.arrives(),
        quarantine.high(),
        quarantine.low(),
        until,
        chance(group.source(), !mates.isEmpty()),
        leaver == null ? null : leaver.group().name(),
        leaver == null ? null : leaver.group().slaughterOn(),
        until == null ? 0 : stay.weightOn(until),
        until == null ? 0 : mates.stream().mapToDouble(s -> s.weightOn(until)).max().orElse(0),
        stay.count() + mates.stream().mapToInt(Stay::count).sum(),
        Table.named("mixing-fights").row("1").number("share"),
        grounds.list());
  }

  private static boolean samePen(Group one, Group other) {
    return one.pen() == null || other.pen() == null || Objects.equals(one.pen(), other.pen());
  }

  private static String from(Group.Source source) {
    if (source == null) {
      return "Nobody said where they come from.";
    }
    return switch (source) {
      case BREEDER -> "Even pigs of one farm carry what yours have never met.";
      case DEALER -> "Pigs from a dealer have stood with those of other farms.";
      case AUCTION -> "Pigs from an auction have stood with those of many farms.";
      case SEVERAL -> "Pigs from several farms bring what each of them has.";
    };
  }

  private static double chance(Group.Source source, boolean samePen) {
    double chance = source == null ? 0.7 : source.isMixed() ? 0.8 : 0.5;
    return samePen ? chance : chance / 2;
  }
}
