package swineherd.outlook;

import java.time.LocalDate;
import swineherd.figures.FeedBuying;
import swineherd.setup.Feed;
import swineherd.setup.Setup;

/**
 * How long feed keeps where it stands while these pigs are there; both the checklist and the sheet
 * of figures order by it.
 *
 * @param setup what the keeper said
 * @param from first day that it is fed
 * @param days days that it is fed
 */
public record FeedStore(Setup setup, LocalDate from, int days) {
  /** A dark tank, or a shed in the sun, degC: warmer than any feed should stand. */
  private static final double WARM_STORE = 30;

  /** The form of the feed; where it was not said ground feed, which keeps less long than most. */
  Feed.Form form() {
    return setup.feed().form() == null ? Feed.Form.GROUND : setup.feed().form();
  }

  /** Highest air temperature where the feed stands on an ordinary day of the first days, degC. */
  private double air(int first) {
    Weather weather = new Weather(setup.place());
    LocalDate to = from.plusDays(Math.min(first, days) + 1L);
    double air = from.datesUntil(to).mapToDouble(weather::ordinaryDay).max().orElseThrow();
    Feed.Storage storage = setup.feed().storage();
    boolean warm = storage == Feed.Storage.WARM || storage == Feed.Storage.DAMP;
    return warm ? Math.max(WARM_STORE, air) : air;
  }

  /** Days that feed bought on the first day keeps, if it is fed within so many. */
  int keeps(int within) {
    return FeedBuying.keepsFor(form().key(), air(within));
  }

  /** Days that it keeps, at whatever time it is bought. */
  public int keepsAtWorst() {
    return keeps(days);
  }

  /** Days of use to buy at a time, at whatever time it is bought. */
  public int daysToBuy() {
    return Math.max(1, FeedBuying.daysToBuy(form().key(), air(days), 0));
  }
}
