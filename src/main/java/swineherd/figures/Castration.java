package swineherd.figures;

import java.util.OptionalDouble;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

/**
 * What the law of a place asks before a male pig is castrated (table {@code castration-law}). It
 * tells the least the law asks, never that castrating at home is a good idea: a bought weaner is
 * past the age everywhere but in the United States, and a pig with a swelling or a single testis is
 * for the vet at any age.
 */
public final class Castration {
  private Castration() {}

  /**
   * @param lawKnown whether the table has a law for the place; if not, everything is asked for
   * @param vet only a vet may do it
   * @param analgesic lasting pain relief is demanded
   * @param anaesthetic an anaesthetic is demanded
   */
  public record Demands(boolean lawKnown, boolean vet, boolean analgesic, boolean anaesthetic) {}

  /**
   * @param country null if unknown
   * @param ageDays age in days
   * @throws OutsideDomainException if the age is negative or no number
   */
  public static Demands demands(Country country, double ageDays) {
    double age = OutsideDomainException.within("age in days", ageDays, 0, 5000);
    return Jurisdiction.row("castration-law", country)
        .map(row -> demands(row, age))
        .orElse(new Demands(false, true, true, true));
  }

  /**
   * The law of a place in a sentence for the keeper, or, where country or law are not known, whose
   * work it is; then no law is told.
   *
   * @param country null if unknown
   */
  public static String words(Country country) {
    return Jurisdiction.row("castration-law", country)
        .orElseGet(() -> Table.named("castration-law").row("no-law"))
        .text("words");
  }

  private static Demands demands(Table.Row law, double age) {
    boolean anaesthetic = demandedAt(age, law.maybe("anaesthetic_after_d"));
    // An anaesthetic is the vet's in every place of the table, whatever age is printed beside it.
    boolean vet = anaesthetic || demandedAt(age, law.maybe("lay_until_d"));
    return new Demands(true, vet, demandedAt(age, law.maybe("analgesic_after_d")), anaesthetic);
  }

  private static boolean demandedAt(double age, OptionalDouble after) {
    return after.isPresent() && (after.getAsDouble() == 0 || age > after.getAsDouble());
  }
}
