package swineherd.outlook;

import java.util.List;
import java.util.Optional;
import swineherd.figures.Breed;
import swineherd.figures.KnownWeight;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.TapeWeight;
import swineherd.figures.TapeWeight.PigType;
import swineherd.figures.Weighing;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Group;

/**
 * The live weight that an entry of the diary gives: as it was written, or else from the readings of
 * a tape, with the error that goes with each.
 */
public final class DiaryWeight {
  private DiaryWeight() {}

  /** Whether an entry tells what a group weighs. */
  static boolean isOf(DiaryEntry entry, Group group) {
    return (entry.weight() != null || !entry.girth().isEmpty())
        && group.name().equals(entry.pigs());
  }

  /**
   * The weight of an entry that has a day.
   *
   * @throws OutsideDomainException if the tape was not made for such a pig
   */
  static KnownWeight of(DiaryEntry entry, Group group) {
    if (entry.weight() != null) {
      boolean scale = entry.did() == DiaryEntry.Did.WEIGHED;
      Weighing.Means by = scale ? Weighing.Means.SCALE : Weighing.Means.TAPE;
      return KnownWeight.of(new Weighing(entry.on(), entry.weight(), by));
    }
    TapeWeight.Taped taped = TapeWeight.of(entry.girth(), entry.length(), type(group));
    return new KnownWeight(entry.on(), taped.kg(), taped.error());
  }

  /** The same; empty where the tape was not made for such a pig. */
  static Optional<KnownWeight> maybe(DiaryEntry entry, Group group) {
    try {
      return Optional.of(of(entry, group));
    } catch (OutsideDomainException e) {
      return Optional.empty();
    }
  }

  /**
   * What a group is like to a tape: of a cross the rounder counts, an unknown breed is taken as a
   * modern cross.
   */
  public static PigType type(Group group) {
    PigType type = PigType.MODERN;
    for (String breed : List.of(orEmpty(group.breed()), orEmpty(group.crossedWith()))) {
      PigType other = breed.isEmpty() ? PigType.MODERN : PigType.of(Breed.named(breed));
      type = other.compareTo(type) > 0 ? other : type;
    }
    return type;
  }

  private static String orEmpty(String breed) {
    return breed == null ? "" : breed;
  }
}
