package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.stream.Stream;
import swineherd.figures.ColdSeason;
import swineherd.figures.Hemisphere;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Parasites;
import swineherd.figures.Parasites.History;
import swineherd.figures.Parasites.Keeping;
import swineherd.figures.Withdrawal;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Place;
import swineherd.setup.Setup;

/** What the answers say about worms in one group: how it is kept, and from when to count. */
final class Worms {
  private final Setup setup;
  private final int index;
  private final Group group;
  private final Pen pen;

  Worms(Setup setup, int index) {
    this.setup = setup;
    this.index = index;
    this.group = setup.pigs().get(index);
    this.pen = setup.pen(group.pen()).orElse(null);
  }

  Group group() {
    return group;
  }

  /** Null if the group has no pen. */
  Pen pen() {
    return pen;
  }

  /** The answers about the ground. */
  Grounds ofGround() {
    Grounds of = new Grounds();
    if (pen == null) {
      return of;
    }
    String path = "pens[" + setup.pens().indexOf(pen) + "]";
    of.and(path, "area", "ground", "pigsBefore", "wormsKnown");
    if (!Boolean.FALSE.equals(pen.pigsBefore())) {
      of.and(path, "restedFor");
    }
    return of;
  }

  /** The answers about the pigs' worms. */
  Grounds ofPigs() {
    String path = "pigs[" + index + "]";
    Grounds of = Grounds.of(path, "arrives", "wormedOn", "wormedAtSource", "dungCount");
    if (group.dungCount() == Group.DungCount.CLEAN
        || group.dungCount() == Group.DungCount.POSITIVE) {
      of.and(path, "countedOn");
    }
    for (int k = 0; k < setup.diary().size(); k++) {
      if (isWorming(setup.diary().get(k))) {
        of.and("diary[" + k + "]", "on", "active");
      }
    }
    return of;
  }

  /** Whether they have yet to come; also if nothing tells they are there. */
  boolean toCome() {
    return group.arrives() == null ? !seenHere() : group.arrives().isAfter(setup.checkOn());
  }

  /** Whether what should be done on arrival can still be done. */
  boolean arriving() {
    if (group.arrives() == null) {
      return toCome();
    }
    return group.arrives().isAfter(setup.checkOn().minusDays(Parasites.days("just-come")));
  }

  /** Whether something was seen of them or done to them. */
  private boolean seenHere() {
    return setup.diary().stream().anyMatch(e -> e.tellsOf(group.name()))
        || setup.signs().stream().anyMatch(s -> group.name().equals(s.pigs()));
  }

  /** Last day they were given something against worms; null if none is known. */
  LocalDate lastDose() {
    return Stream.concat(
            Stream.ofNullable(group.wormedOn()),
            setup.diary().stream().filter(this::isWorming).map(DiaryEntry::on))
        .filter(Objects::nonNull)
        .max(LocalDate::compareTo)
        .orElse(null);
  }

  /** One pig that was wormed alone says nothing of the others. */
  private boolean isWorming(DiaryEntry entry) {
    return Treated.isTreatment(entry, group)
        && entry.pig() == null
        && Withdrawal.isForWorms(entry.active());
  }

  /** Last clean dung count; null if its day is unknown or there is none. */
  LocalDate lastClean() {
    return group.dungCount() == Group.DungCount.CLEAN ? group.countedOn() : null;
  }

  /** Whether worm eggs were found and no dose is known to have followed. */
  boolean untreated() {
    return group.dungCount() == Group.DungCount.POSITIVE
        && (lastDose() == null
            || group.countedOn() == null
            || lastDose().isBefore(group.countedOn()));
  }

  /**
   * How they are kept, as far as worms go.
   *
   * @param from day from which the next dung count is reckoned
   */
  Keeping keeping(LocalDate from) {
    Pen.Ground ground = pen == null ? null : pen.ground();
    return new Keeping(
        areaPerPig(), ground, restDays(), washed(), history(), ageWeeks(from), false, cold(from));
  }

  /** m2 for each pig of all groups in the pen; null if the pen or any number is unknown. */
  Double areaPerPig() {
    if (pen == null || pen.area() == null) {
      return null;
    }
    int pigs = 0;
    for (Group each : setup.pigs()) {
      if (pen.name().equals(each.pen())) {
        if (each.count() == null) {
          return null;
        }
        pigs += each.count();
      }
    }
    return pen.area() / pigs;
  }

  /** Days the ground was without pigs; infinite if it never had any, null if unknown. */
  Double restDays() {
    if (pen == null) {
      return null;
    }
    if (Boolean.FALSE.equals(pen.pigsBefore())) {
      return Double.POSITIVE_INFINITY;
    }
    return pen.restedFor();
  }

  private Boolean washed() {
    return pen == null ? null : pen.steamed();
  }

  /** The worst of what is known. */
  private History history() {
    if (group.dungCount() == Group.DungCount.POSITIVE
        || (pen != null && Boolean.TRUE.equals(pen.wormsKnown()))) {
      return History.KNOWN_POSITIVE;
    }
    if (group.dungCount() == Group.DungCount.CLEAN) {
      return History.TWO_CLEAN_TESTS;
    }
    return Boolean.TRUE.equals(group.wormedAtSource()) ? History.DOSED_AT_SOURCE : null;
  }

  private Double ageWeeks(LocalDate on) {
    LocalDate born = group.born();
    if (born == null && group.arrives() != null && group.ageOnArrival() != null) {
      born = group.arrives().minusDays(Math.round(group.ageOnArrival()));
    }
    return born == null ? null : Math.max(0, ChronoUnit.DAYS.between(born, on) / 7.0);
  }

  /**
   * Whether the ground stays too cold for worm eggs all the way to the next count: taken as so in
   * the season of hard freezes only, and never indoors. Null if it cannot be told.
   */
  private Boolean cold(LocalDate from) {
    Place place = setup.place();
    if (pen == null || pen.ground() == null) {
      return null;
    }
    if (!pen.ground().isEarth()) {
      return false;
    }
    if (Boolean.FALSE.equals(place.freezes())) {
      return false;
    }
    Climate climate = new Climate(place);
    Hemisphere hemisphere = climate.hemisphereSaid().orElse(null);
    if (hemisphere == null) {
      return null;
    }
    LocalDate to = from.plusDays(Parasites.days("ceiling"));
    if (inWarmHalf(from, hemisphere) || inWarmHalf(to, hemisphere)) {
      return false;
    }
    if (place.firstHardFrost() == null) {
      return null;
    }
    try {
      ColdSeason season = climate.coldSeason(from);
      return season.contains(from) && season.contains(to);
    } catch (OutsideDomainException e) {
      return null;
    }
  }

  private static boolean inWarmHalf(LocalDate day, Hemisphere hemisphere) {
    boolean aprilToSeptember = day.getMonthValue() >= 4 && day.getMonthValue() <= 9;
    return aprilToSeptember == (hemisphere == Hemisphere.NORTH);
  }
}
