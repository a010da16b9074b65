package swineherd.figures;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import swineherd.rulebook.Referral;
import swineherd.rulebook.Table;

/**
 * One sign of illness by itself (table {@code signs}): how soon somebody must be called for it, and
 * what is said of it. What signs mean together, or in a certain setup, is for the rules.
 *
 * <pre>{@code
 * Triage.of("lame").level(new Triage.Circumstances(false, 1L, true, false)); // this week
 * }</pre>
 */
public final class Triage {
  private final Table.Row row;

  private Triage(Table.Row row) {
    this.row = row;
  }

  /**
   * What is known beside the sign. What is not known is given as its worse side, so that not
   * knowing never lowers a level.
   *
   * @param several whether more than one pig shows it, or nobody said how many
   * @param days since when it shows, days; null if nobody said, which counts as long
   * @param measured whether its temperature was taken
   * @param young whether it is under 12 weeks, or nobody knows its age
   */
  public record Circumstances(boolean several, Long days, boolean measured, boolean young) {}

  /**
   * The row of a sign.
   *
   * @throws IllegalArgumentException if the table has none of that key
   */
  public static Triage of(String sign) {
    return new Triage(Table.named("signs").row(sign));
  }

  /** All signs in the order of the table. */
  public static List<Triage> all() {
    return Table.named("signs").rows().stream().map(Triage::new).toList();
  }

  public String key() {
    return row.key();
  }

  /** The sign in two or three words. */
  public String label() {
    return row.text("label");
  }

  /** How soon somebody must be called for it at least. */
  public Referral least() {
    return referral("one");
  }

  /** What is seen, in words. */
  public String name() {
    return row.text("name");
  }

  /**
   * How soon somebody must be called for this sign alone; {@link Referral#NONE} means to watch it.
   * The highest of the levels that apply.
   */
  public Referral level(Circumstances known) {
    Referral level = referral("one");
    if (known.several()) {
      level = higher(level, referral("several"));
    }
    if (row.maybe("after_days").isPresent()
        && (known.days() == null || known.days() >= row.number("after_days"))) {
      level = higher(level, referral("lasting"));
    }
    if (!known.measured()) {
      level = higher(level, referral("unmeasured"));
    }
    return known.young() ? higher(level, referral("young")) : level;
  }

  /** Other signs to look for, which separate the possibilities. */
  public List<String> ask() {
    return list("ask");
  }

  /** What to raise with a vet, in words: never a diagnosis. */
  public String concerns() {
    return row.text("concerns");
  }

  /** What a keeper can do with safety, in sentences. */
  public String meanwhile() {
    return row.text("meanwhile");
  }

  /** What not to do, in sentences; empty if there is nothing special. */
  public String never() {
    return row.text("never");
  }

  /** What people must mind, in sentences; empty if there is nothing special. */
  public String people() {
    return row.text("people");
  }

  /** Words for it other than its name, as keepers use them. */
  public List<String> also() {
    return list("also");
  }

  /** The higher of two referrals. */
  public static Referral higher(Referral a, Referral b) {
    return a.compareTo(b) >= 0 ? a : b;
  }

  private Referral referral(String column) {
    String key = row.text(column);
    return key.isEmpty()
        ? Referral.NONE
        : Referral.valueOf(key.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  private List<String> list(String column) {
    return Arrays.stream(row.text(column).split(";"))
        .map(String::strip)
        .filter(s -> !s.isEmpty())
        .toList();
  }
}
