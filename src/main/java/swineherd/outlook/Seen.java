package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import swineherd.figures.Triage;
import swineherd.rulebook.Table;
import swineherd.setup.Country;
import swineherd.units.Dates;

/**
 * All that is seen on the pigs of a group, taken together, and what of the setup matters to it.
 *
 * @param pigs name of the group; empty if it was not said and there are several
 * @param who that name, or a word where there is none
 * @param shown keys of the signs
 * @param several those of them that more than one pig shows, or nobody said how many
 * @param died whether one died in the last days, by the diary
 * @param newPigs whether pigs came to the place within the days of a quarantine
 * @param frost whether frost may have stopped the water: the cold months, and water of which nobody
 *     knows that frost does not stop it
 * @param each water for one pig in an hour while it comes back in steps, L
 * @param weight they are reckoned at for that, kg
 * @param scraps whether they are fed kitchen waste or meat
 * @param country where; null if not known
 * @param slaughterOn the day set for their slaughter, if it lies ahead; null if none is
 * @param until when to have looked again, if nothing worse calls: the next day
 * @param assumed what was not said and how it was taken
 */
public record Seen(
    String pigs,
    String who,
    Set<String> shown,
    Set<String> several,
    boolean died,
    boolean newPigs,
    boolean frost,
    double each,
    double weight,
    boolean scraps,
    Country country,
    LocalDate slaughterOn,
    LocalDate until,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  /** What begins like a sentence is one; PRRS is none. */
  private static final Pattern SENTENCE = Pattern.compile("\\p{Lu}[\\p{Ll} ]");

  /** The signs in few words, the most urgent first: "high fever, off feed". */
  public String named(Collection<?> signs) {
    return ordered(signs).stream().map(Triage::label).collect(Collectors.joining(", "));
  }

  /** What each may be; concerns that begin with a capital are sentences of their own. */
  public String concerns(Collection<?> signs) {
    return ordered(signs).stream()
        .map(
            s ->
                SENTENCE.matcher(s.concerns()).lookingAt()
                    ? s.concerns() + "."
                    : capital(s.label()) + " may be " + s.concerns() + ".")
        .distinct()
        .collect(Collectors.joining(" "));
  }

  /** What can be done meanwhile, each sentence once. */
  public String meanwhile(Collection<?> signs) {
    return sentences(signs, Triage::meanwhile);
  }

  /** What must not be done, each sentence once. */
  public String never(Collection<?> signs) {
    return sentences(signs, Triage::never);
  }

  /** What people must mind, each sentence once. */
  public String people(Collection<?> signs) {
    return sentences(signs, Triage::people);
  }

  /** What was taken at its worst, a sentence; empty if nothing was. */
  public String taken() {
    return assumed.isEmpty() ? "" : "Not said: " + String.join(", ", assumed) + ".";
  }

  /** Whom to tell where the pigs are, a sentence. */
  public String authority() {
    if (country == null) {
      return "Ring the animal-health authority, or your vet at once, who knows the number.";
    }
    String key = country.key();
    Table numbers = Table.named("authorities");
    if (!numbers.has(key)) {
      return "Ring the animal-health authority of your district, or your vet at once, who knows the number.";
    }
    String phone = numbers.row(key).text("phone");
    return "Ring " + numbers.row(key).text("name") + (phone.isEmpty() ? "." : ": " + phone + ".");
  }

  /** What it means for a day that is set for slaughter, a sentence; empty if none is. */
  public String booked() {
    return slaughterOn == null
        ? ""
        : "Slaughter is set for "
            + Dates.words(slaughterOn)
            + ": tell them that it may have to move.";
  }

  /** One more sentence where they eat what swine fever comes with. */
  public String scrapsToo() {
    return scraps ? "They are fed kitchen waste or meat, by which swine fever comes." : "";
  }

  private static String sentences(Collection<?> signs, Function<Triage, String> text) {
    Set<String> once = new LinkedHashSet<>();
    for (Triage sign : ordered(signs)) {
      for (String sentence : text.apply(sign).split("(?<=\\.) ")) {
        if (!sentence.isBlank()) {
          once.add(sentence.strip());
        }
      }
    }
    return String.join(" ", once);
  }

  private static List<Triage> ordered(Collection<?> signs) {
    List<Triage> ordered = new ArrayList<>(Triage.all());
    ordered.removeIf(s -> !signs.contains(s.key()));
    ordered.sort(Comparator.comparing(Triage::least).reversed()); // else as in the table
    return ordered;
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
