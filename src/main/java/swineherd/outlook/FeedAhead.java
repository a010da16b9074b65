package swineherd.outlook;

import java.util.ArrayList;
import java.util.List;
import swineherd.rulebook.Table;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * Feed still to be given in a pen, and what more of it is lost where it is thrown on the ground
 * than in a trough. There is one for each pen whose pigs are counted and have a course and an end.
 *
 * @param pen name of the pen
 * @param given what they get from now, or from the day they come, kg
 * @param spilt what is lost of it on the ground more than in a trough, kg
 * @param cost what that costs, a sentence; empty if the price of feed was not said
 */
public record FeedAhead(String pen, double given, double spilt, String cost, List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    Table factors = Table.named("feed-factors");
    double more =
        factors.row("thrown-on-ground").number("value") - factors.row("trough").number("value");
    Double price = setup.money().feed();
    for (PenStays in : PenStays.of(setup, courses)) {
      Pen pen = in.pen();
      if (pen.name() == null || !in.stays().stream().allMatch(AllFeed::isKnown)) {
        continue;
      }
      double given = 0;
      Grounds grounds = Grounds.of("feed", "kind").said("money.feed", price);
      for (Stay stay : in.stays()) {
        given += stay.count() * DailyFeed.of(stay).given(stay.from(), stay.to());
        grounds.and(stay.grounds().list());
      }
      double spilt = more * given;
      all.add(
          new FeedAhead(
              pen.name(),
              given,
              spilt,
              price == null ? "" : "At your price that is " + Prices.money(spilt * price) + ".",
              grounds.list()));
    }
    return all;
  }
}
