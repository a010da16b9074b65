package swineherd.outlook;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import swineherd.figures.FeedBuying;
import swineherd.setup.Setup;

/**
 * What all groups get through day by day, from now or the first arrival until the last have gone.
 */
final class AllFeed {
  /** Days in which it shows whether feed that spoils soon does so. */
  private static final int MONTH = 28;

  private final LocalDate from;
  private final double[] kg;
  private final Setup setup;
  private final Grounds grounds;

  private AllFeed(LocalDate from, double[] kg, Setup setup, Grounds grounds) {
    this.from = from;
    this.kg = kg;
    this.setup = setup;
    this.grounds = grounds;
  }

  /** Nothing if the number, growth or end of a group is not known, or there are no pigs. */
  static Optional<AllFeed> of(Setup setup, List<Course> courses) {
    List<Stay> stays = Stay.of(setup, courses);
    if (stays.isEmpty() || !stays.stream().allMatch(AllFeed::isKnown)) {
      return Optional.empty();
    }
    LocalDate from = Stay.first(stays);
    LocalDate to = stays.stream().map(Stay::to).max(LocalDate::compareTo).orElseThrow();
    double[] kg = from.datesUntil(to).mapToDouble(day -> on(day, stays)).toArray();
    Grounds grounds = Grounds.of("feed", "kind", "form", "storage");
    stays.forEach(s -> grounds.and(s.grounds().list()));
    return kg.length == 0 ? Optional.empty() : Optional.of(new AllFeed(from, kg, setup, grounds));
  }

  /** Whether all is known that the feed of a group hangs on. */
  static boolean isKnown(Stay stay) {
    return stay.group().count() != null && stay.course() != null && stay.course().end() != null;
  }

  private static double on(LocalDate day, List<Stay> stays) {
    return stays.stream()
        .filter(s -> s.isThereOn(day))
        .mapToDouble(s -> s.count() * DailyFeed.of(s).givenOn(day))
        .sum();
  }

  private FeedStore store() {
    return new FeedStore(setup, from, kg.length);
  }

  /** The first day. */
  LocalDate from() {
    return from;
  }

  int days() {
    return kg.length;
  }

  /** kg, waste counted. */
  double total() {
    return sum(0, kg.length);
  }

  /** kg from a day on, 0 for the first, in so many days. */
  double sum(int first, int days) {
    return Arrays.stream(kg, first, Math.min(kg.length, first + days)).sum();
  }

  /** The most in so many days on end, kg. */
  double most(int days) {
    double most = 0;
    for (int first = 0; first == 0 || first + days <= kg.length; first++) {
      most = Math.max(most, sum(first, days));
    }
    return most;
  }

  /** The form of the feed in words. */
  String formWords() {
    if (setup.feed().form() == null) {
      return "taken as ground feed";
    }
    return switch (setup.feed().form()) {
      case PELLETS -> "pellets";
      case GROUND -> "ground feed";
      case HOME_MASH -> "feed ground at home";
      case WHOLE_GRAIN -> "whole grain";
      case MILK_OR_FAT_MASH -> "meal with milk or fat";
      case WET -> "wet feed";
    };
  }

  /** Days that it keeps where it stands, bought now. */
  int keeps() {
    return store().keeps(MONTH);
  }

  /** Days that it keeps where it stands, at whatever time it is bought. */
  int keepsAtWorst() {
    return store().keepsAtWorst();
  }

  /** Days of use to buy at a time, at whatever time it is bought. */
  int daysToBuy() {
    return store().daysToBuy();
  }

  /** What becomes of a load that is fed from the first day on. */
  FeedBuying.Load load(double load) {
    return FeedBuying.load(kg, 0, load, keeps());
  }

  Grounds grounds() {
    return grounds;
  }
}
