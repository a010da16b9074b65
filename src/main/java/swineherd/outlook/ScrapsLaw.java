package swineherd.outlook;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import swineherd.figures.Swill;
import swineherd.rulebook.Rulebook;
import swineherd.setup.Country;
import swineherd.setup.Feed;
import swineherd.setup.Setup;

/**
 * What the law of the place says of the scraps that are fed. There is one where some are.
 *
 * @param where whose law it is
 * @param place the place in words
 * @param forbidden what may not be fed, in words; null if nothing of it
 * @param check what may not be fed before the local rule was read, in words; null if nothing of it
 * @param meat whether there is meat or fish in it, or may have been
 * @param pigsThere whether there are pigs that may have had some already
 * @param watchUntil how long to watch them if they had meat
 */
public record ScrapsLaw(
    Where where,
    String place,
    String forbidden,
    String check,
    boolean meat,
    boolean pigsThere,
    LocalDate watchUntil,
    List<String> grounds)
    implements Outlook {

  /** Whose law holds. */
  public enum Where {
    UNITED_KINGDOM,
    EUROPEAN_UNION,
    UNITED_STATES,
    CANADA,
    AUSTRALIA,
    NEW_ZEALAND,
    NOT_KNOWN
  }

  /** The longest that swine fever takes to show, days ({@code vic-asf}: 5 to 15, up to 20). */
  private static final int WATCH_DAYS = 20;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Feed.Scraps> scraps = setup.feed().scraps();
    return scraps == null || scraps.isEmpty() ? List.of() : List.of(law(setup, courses));
  }

  private static ScrapsLaw law(Setup setup, List<Course> courses) {
    Country country = setup.place().country();
    String state = setup.place().state();
    Where where = where(country);
    boolean none = where == Where.NOT_KNOWN;
    return new ScrapsLaw(
        where,
        none ? "" : place(country, state),
        none ? null : those(setup, Swill.Verdict.FORBIDDEN),
        none ? null : those(setup, Swill.Verdict.CHECK),
        setup.feed().scraps().contains(Feed.Scraps.MEAT),
        Stay.of(setup, courses).stream().anyMatch(s -> !s.from().isAfter(setup.checkOn())),
        setup.checkOn().plusDays(WATCH_DAYS),
        grounds(where).list());
  }

  private static Grounds grounds(Where where) {
    Grounds grounds = Grounds.of("feed", "scraps").and("place", "country");
    boolean byState =
        where == Where.UNITED_STATES || where == Where.CANADA || where == Where.AUSTRALIA;
    return byState ? grounds.and("place", "state") : grounds;
  }

  private static Where where(Country country) {
    if (country == null) {
      return Where.NOT_KNOWN;
    }
    if (country.isUnitedKingdom()) {
      return Where.UNITED_KINGDOM;
    }
    if (country.isEuropeanUnion()) {
      return Where.EUROPEAN_UNION;
    }
    return switch (country) {
      case UNITED_STATES -> Where.UNITED_STATES;
      case CANADA -> Where.CANADA;
      case AUSTRALIA -> Where.AUSTRALIA;
      case NEW_ZEALAND -> Where.NEW_ZEALAND;
      default -> Where.NOT_KNOWN;
    };
  }

  private static String place(Country country, String state) {
    String name = Rulebook.questions().get("place.country").choices().get(country.key());
    return state == null ? name : state.strip() + ", " + name;
  }

  private static String those(Setup setup, Swill.Verdict verdict) {
    String words =
        setup.feed().scraps().stream()
            .filter(s -> swill(s) != null)
            .filter(
                s ->
                    Swill.verdict(setup.place().country(), setup.place().state(), swill(s))
                        == verdict)
            .map(ScrapsLaw::words)
            .collect(Collectors.joining(", "));
    return words.isEmpty() ? null : words;
  }

  /** What the law calls it; null for what no law on scraps is about. */
  private static Swill.Scraps swill(Feed.Scraps scraps) {
    return switch (scraps) {
      case GARDEN -> Swill.Scraps.GARDEN;
      case KITCHEN -> Swill.Scraps.KITCHEN_PLANT;
      case MEAT -> Swill.Scraps.ANIMAL;
      case BAKERY -> Swill.Scraps.BAKERY;
      case WHEY, MILK -> Swill.Scraps.MILK;
      case NONE, BREWERS_GRAINS, COOKED_POTATOES, RAW_POTATOES, ACORNS -> null;
    };
  }

  private static String words(Feed.Scraps scraps) {
    return switch (scraps) {
      case KITCHEN -> "what comes from a kitchen";
      case MEAT -> "meat, fish and all that touched them";
      case BAKERY -> "bread and cakes";
      default -> scraps.name().toLowerCase(Locale.ROOT);
    };
  }
}
