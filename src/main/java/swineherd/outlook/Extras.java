package swineherd.outlook;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import swineherd.figures.ByProducts;
import swineherd.setup.Feed;
import swineherd.setup.Setup;
import swineherd.units.Dimension;
import swineherd.units.Display;
import swineherd.units.UnitSystem;

/**
 * What a group gets besides its feed, against what a pig of its weight bears. There is one for each
 * group where something is given.
 *
 * @param pigs name of the group
 * @param weight now, or when they come, kg
 * @param limits the most of each as a share of all they eat, reckoned dry, or by the day, in words;
 *     null if there is none they may have
 * @param tooLight what they are too light for, in words; null if nothing
 * @param lacks what a ration lacks that is thinned with it, in words
 * @param amount whether it is more than they bear
 */
public record Extras(
    String pigs,
    double weight,
    String limits,
    String tooLight,
    String lacks,
    Amount amount,
    List<String> grounds)
    implements Outlook {

  /** How much they get. */
  public enum Amount {
    WITHIN,
    NOT_KNOWN,
    BEYOND
  }

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    if (setup.feed().scraps() != null) {
      for (Stay stay : Stay.of(setup, courses)) {
        Extras extras = of(setup.feed(), stay);
        if (extras.limits != null || extras.tooLight != null) {
          all.add(extras);
        }
      }
    }
    return all;
  }

  private static Extras of(Feed feed, Stay stay) {
    double weight = stay.weightOn(stay.from());
    List<String> limits = new ArrayList<>();
    List<String> tooLight = new ArrayList<>();
    Set<String> lacks = new LinkedHashSet<>();
    double eaten = DailyFeed.of(stay).eatenOn(stay.from());
    double most = 0;
    boolean shareTells = true;
    for (Feed.Scraps scraps : feed.scraps()) {
      String byProduct = byProduct(scraps);
      if (byProduct == null) {
        continue;
      }
      OptionalDouble share = ByProducts.highestShare(byProduct, weight);
      OptionalDouble litres = ByProducts.mostPerDay(byProduct, weight, eaten);
      String words = scraps.name().toLowerCase(Locale.ROOT).replace('_', ' ');
      if (ByProducts.fromWeight(byProduct) > weight) {
        tooLight.add(words);
      } else if (share.isPresent()) {
        limits.add(words + " " + Math.round(100 * share.getAsDouble()) + " %");
        lacks.addAll(ByProducts.shortOf(byProduct));
        most += share.getAsDouble();
      } else if (litres.isPresent()) {
        limits.add(words + " " + volume(litres.getAsDouble()) + " a day");
        lacks.addAll(ByProducts.shortOf(byProduct));
        shareTells = false;
      }
    }
    return new Extras(
        stay.group().name(),
        weight,
        list(limits),
        list(tooLight),
        list(List.copyOf(lacks)),
        shareTells ? amount(feed.scrapsShare(), 100 * most) : Amount.NOT_KNOWN,
        stay.grounds().and("feed", "scraps", "scrapsShare").list());
  }

  private static Amount amount(Double said, double most) {
    if (said == null) {
      return Amount.NOT_KNOWN;
    }
    return said > most ? Amount.BEYOND : Amount.WITHIN;
  }

  /** In both units, since it stands among words. */
  private static String volume(double litres) {
    return Display.amount(litres, Dimension.VOLUME, UnitSystem.METRIC)
        + " ("
        + Display.amount(litres, Dimension.VOLUME, UnitSystem.US)
        + ")";
  }

  private static String list(List<String> words) {
    if (words.isEmpty()) {
      return null;
    }
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** Row of the table by-products; null for what has none, or is not to be fed at all. */
  private static String byProduct(Feed.Scraps scraps) {
    return switch (scraps) {
      case GARDEN -> "roots-and-vegetables";
      case BAKERY -> "bread";
      case WHEY -> "whey";
      case MILK -> "skim-milk";
      case BREWERS_GRAINS -> "brewers-grains";
      case COOKED_POTATOES -> "cooked-potatoes";
      case ACORNS -> "acorns";
      case NONE, KITCHEN, MEAT, RAW_POTATOES -> null;
    };
  }
}
