package swineherd.figures;

import java.time.LocalDate;
import java.time.Month;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import swineherd.rulebook.Table;

/**
 * A plant, or the like, that poisons pigs: a row of {@code rules/tables/plants.csv}. It says what
 * to look for and how long to wait, never what to treat with: on suspicion take the pigs off, keep
 * the plant and a photo, and call the vet now.
 *
 * @param key key in the table
 * @param name its usual name
 * @param alsoCalled other names for it
 * @param latin genus or species; empty if it has none
 * @param parts what of it is dangerous
 * @param when when the risk is greatest, in words; may be empty
 * @param months the same in months of the northern half of the world; all if no season is published
 * @param grade how dangerous it is; the graver where that depends on the kind or the part
 * @param shows what pigs show; empty where no source was seen
 * @param watchDays days for which new cases may still come after the pigs are off
 * @param withholdDays days after they are off before any may be slaughtered
 * @param dangerAfterDays days on it after which deaths are to be expected
 * @param note what else to know; may be empty
 */
public record Plant(
    String key,
    String name,
    List<String> alsoCalled,
    String latin,
    String parts,
    String when,
    Set<Month> months,
    Grade grade,
    String shows,
    OptionalInt watchDays,
    OptionalInt withholdDays,
    OptionalInt dangerAfterDays,
    String note) {

  /** How dangerous, gravest first. */
  public enum Grade {
    /** Little kills. */
    A,
    /** Dangerous in quantity, or after weeks. */
    B,
    /** Mild, or bad only by excess. */
    C
  }

  public Plant {
    alsoCalled = List.copyOf(alsoCalled);
    months = Set.copyOf(months);
  }

  /** All of them, in the order of the table. */
  public static List<Plant> all() {
    return Table.named("plants").rows().stream().map(Plant::of).toList();
  }

  /**
   * The plant of that name: key, usual name, another name or Latin name, in any case.
   *
   * @return empty if none is known by it, which does not make it safe
   */
  public static Optional<Plant> called(String name) {
    String wanted = name.strip().toLowerCase(Locale.ROOT);
    return all().stream().filter(plant -> plant.isCalled(wanted)).findFirst();
  }

  private boolean isCalled(String wanted) {
    return Stream.concat(Stream.of(key, name, latin), alsoCalled.stream())
        .map(known -> known.toLowerCase(Locale.ROOT))
        .anyMatch(known -> !known.isEmpty() && known.equals(wanted));
  }

  /**
   * Whether the risk is greatest in a month. Out of season a plant is still poisonous.
   *
   * @param southern whether the place lies south of the equator, where seasons are half a year off
   */
  public boolean isSeason(Month month, boolean southern) {
    return months.contains(southern ? month.plus(6) : month);
  }

  /**
   * What time on the plant means: red for one of which little kills, from the first day, and for
   * any after the days from which deaths are to be expected; amber otherwise.
   *
   * @param days the pigs have been where it grows, 0 or more
   * @throws OutsideDomainException below 0
   */
  public Signal exposure(double days) {
    OutsideDomainException.within("days on the plant", days, 0, Double.MAX_VALUE);
    boolean late = dangerAfterDays.isPresent() && days > dangerAfterDays.getAsInt();
    return grade == Grade.A || late ? Signal.RED : Signal.AMBER;
  }

  /**
   * Last day on which a new case may come.
   *
   * @param takenOff day on which the pigs were taken off
   * @return empty if no such time is published
   */
  public Optional<LocalDate> watchUntil(LocalDate takenOff) {
    return watchDays.isPresent()
        ? Optional.of(takenOff.plusDays(watchDays.getAsInt()))
        : Optional.empty();
  }

  private static Plant of(Table.Row row) {
    return new Plant(
        row.key(),
        row.text("name"),
        words(row.text("also"), ";"),
        row.text("latin"),
        row.text("parts"),
        row.text("when"),
        months(row.text("months")),
        Grade.valueOf(row.text("grade").substring(0, 1)),
        row.text("shows"),
        days(row, "watch_days"),
        days(row, "withhold_days"),
        days(row, "danger_after_days"),
        row.text("note"));
  }

  private static Set<Month> months(String numbers) {
    Set<Month> months = EnumSet.noneOf(Month.class);
    words(numbers, " ").forEach(number -> months.add(Month.of(Integer.parseInt(number))));
    return months.isEmpty() ? EnumSet.allOf(Month.class) : months;
  }

  private static List<String> words(String cell, String separator) {
    return Arrays.stream(cell.split(separator)).filter(word -> !word.isEmpty()).toList();
  }

  private static OptionalInt days(Table.Row row, String column) {
    return row.maybe(column).isPresent()
        ? OptionalInt.of((int) row.number(column))
        : OptionalInt.empty();
  }
}
