package swineherd.outlook;

import java.time.LocalDate;
import java.util.List;
import swineherd.figures.FeedBuying;
import swineherd.setup.Money;
import swineherd.setup.Setup;

/**
 * A bulk load against what the pigs eat of it while it keeps, from now or from the first arrival.
 * There is one where a load is named, and number, growth and end of every group are known.
 *
 * @param load kg
 * @param total what they get through until the last have gone, kg
 * @param days until then
 * @param keeps days the feed keeps where it stands
 * @param form of the feed in words
 * @param eaten of the load while it keeps, kg
 * @param atATime days of use to buy at a time instead
 * @param first for the first so many days, kg
 * @param most for the so many days in which they eat most, kg
 * @param left of it when it is no longer fit or they have gone, kg
 * @param verdict whether to buy it
 * @param likely how likely harm is of feed gone bad: half the share that is left, a judgement
 * @param evenAt load from which bulk is cheaper, all of it eaten, kg; null where it never is, or
 *     the prices are not known
 * @param by when it is decided
 */
public record FeedLoad(
    double load,
    double total,
    int days,
    int keeps,
    String form,
    double eaten,
    int atATime,
    double first,
    double most,
    double left,
    Verdict verdict,
    double likely,
    Double evenAt,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  /** What to think of a load. */
  public enum Verdict {
    /** Too much of it would be left or go stale. */
    TOO_MUCH,
    /** It is eaten, but bags are cheaper. */
    TOO_DEAR,
    /** It is eaten in time, and not known to be dearer than bags. */
    FITS
  }

  /** Share of a load that may be left without making it a bad one; judgement. */
  private static final double MAY_BE_LEFT = 0.05;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    if (setup.money().bulkLoad() == null) {
      return List.of();
    }
    return AllFeed.of(setup, courses).map(use -> (Outlook) of(setup, use)).stream().toList();
  }

  private static FeedLoad of(Setup setup, AllFeed use) {
    Money money = setup.money();
    FeedBuying.Load load = use.load(money.bulkLoad());
    boolean tooMuch = load.left() > MAY_BE_LEFT * load.kg();
    Double evenAt = null;
    boolean tooDear = false;
    if (money.feed() != null && money.bulk() != null) {
      double extra = money.bulkDelivery() == null ? 0 : money.bulkDelivery();
      FeedBuying.Offer offer = new FeedBuying.Offer(money.feed(), money.bulk(), extra, 0);
      tooDear = offer.saving(load) < 0;
      evenAt = offer.breaksEvenAt().isPresent() ? offer.breaksEvenAt().getAsDouble() : null;
    }
    return new FeedLoad(
        load.kg(),
        use.total(),
        use.days(),
        use.keeps(),
        use.formWords(),
        load.eaten(),
        use.daysToBuy(),
        use.sum(0, use.daysToBuy()),
        use.most(use.daysToBuy()),
        load.left(),
        tooMuch ? Verdict.TOO_MUCH : tooDear ? Verdict.TOO_DEAR : Verdict.FITS,
        load.left() / load.kg() / 2,
        evenAt,
        setup.checkOn(),
        Grounds.of("money", "bulkLoad").and(use.grounds().list()).list());
  }
}
