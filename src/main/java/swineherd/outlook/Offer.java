package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import swineherd.figures.Band;
import swineherd.figures.Breed;
import swineherd.figures.GrowthClass;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Weaner;
import swineherd.figures.WeanerPurchase;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * What is known of pigs that are to be bought. Days and weights are of the day they would come.
 *
 * @param pigs name of the group
 * @param source where they are bought; null if not known
 * @param age in days; null if not known
 * @param tooYoung whether they are under six weeks
 * @param longer days until they are eight weeks old; 0 if they are, or their age is not known
 * @param ready the day on which they are eight weeks old; null if age or arrival is not known
 * @param weanedAt age at weaning, days; null if not known
 * @param lawWeaning least age at weaning by the law of the country; null if none is known
 * @param housedWeaning the same for pigs that go into emptied and cleaned housing apart from sows
 * @param weanedTooEarly whether they were weaned before {@code lawWeaning}
 * @param weanedFor days since weaning on arrival; null if age or weaning is not known
 * @param justWeaned whether that is less than two weeks
 * @param weight of one, kg; null if not known
 * @param usual what pigs of the breed weigh at that age, kg; null if age or breed is not known
 * @param light whether they weigh less than that
 * @param grown whether they are no weaners any more, over sixteen weeks
 * @param lard whether they are bred for lard and not crossed with anything leaner
 * @param asks what to ask the seller, in words; empty if all of it is known
 * @param by two weeks before they come, to be still free to choose; null if no day is known
 */
public record Offer(
    String pigs,
    Group.Source source,
    Double age,
    boolean tooYoung,
    double longer,
    LocalDate ready,
    Double weanedAt,
    Integer lawWeaning,
    Integer housedWeaning,
    boolean weanedTooEarly,
    Double weanedFor,
    boolean justWeaned,
    Double weight,
    Band usual,
    boolean light,
    boolean grown,
    boolean lard,
    String asks,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  private static final int LEAD_DAYS = 14;
  private static final double EIGHT_WEEKS = 56;
  private static final double OLDEST_WEEKS = 16;

  /** Two weeks of dry feed before they travel; common practice. */
  private static final double SETTLED = 14;

  static List<Outlook> of(Setup setup) {
    List<Outlook> all = new ArrayList<>();
    Whereabouts whereabouts = new Whereabouts(setup);
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      if (whereabouts.isComing(group)) {
        all.add(of(setup, group, "pigs[" + i + "]"));
      }
    }
    return all;
  }

  private static Offer of(Setup setup, Group group, String path) {
    LocalDate born = Leaving.of(group, List.of()).born();
    Double age =
        group.ageOnArrival() != null || born == null || group.arrives() == null
            ? group.ageOnArrival()
            : Double.valueOf((double) ChronoUnit.DAYS.between(born, group.arrives()));
    GrowthClass growthClass = growthClass(group);
    boolean tooYoung =
        age != null
            && age / 7 <= OLDEST_WEEKS
            && WeanerPurchase.offer(age / 7, 0, GrowthClass.unknownBreed())
                == WeanerPurchase.Offer.TOO_YOUNG;
    Band usual = usual(age, growthClass);
    Double weanedFor =
        age == null || group.weanedAt() == null ? null : Math.max(0, age - group.weanedAt());
    OptionalInt law = Weaner.minimumWeaningDays(setup.place().country(), false);
    OptionalInt housed = Weaner.minimumWeaningDays(setup.place().country(), true);
    double longer = age == null ? 0 : Math.max(0, EIGHT_WEEKS - age);
    return new Offer(
        group.name(),
        group.source(),
        age,
        tooYoung,
        longer,
        age == null || group.arrives() == null
            ? null
            : group.arrives().plusDays(Math.round(longer)),
        group.weanedAt(),
        law.isPresent() ? law.getAsInt() : null,
        housed.isPresent() ? housed.getAsInt() : null,
        law.isPresent() && group.weanedAt() != null && group.weanedAt() < law.getAsInt(),
        weanedFor,
        weanedFor != null && weanedFor < SETTLED,
        group.arrivalWeight(),
        usual,
        usual != null && group.arrivalWeight() != null && group.arrivalWeight() < usual.low(),
        age != null && age / 7 > OLDEST_WEEKS,
        Course.isLard(group),
        asks(group, age),
        group.arrives() == null ? null : group.arrives().minusDays(LEAD_DAYS),
        Grounds.of(path, "source", "ageOnArrival", "born", "weanedAt", "breed", "arrivalWeight")
            .list());
  }

  private static GrowthClass growthClass(Group group) {
    if (group.breed() == null) {
      return null;
    }
    GrowthClass of = GrowthClass.named(Breed.named(group.breed()).growthClass());
    return group.crossedWith() == null
        ? of
        : of.crossedWith(GrowthClass.named(Breed.named(group.crossedWith()).growthClass()));
  }

  private static Band usual(Double age, GrowthClass growthClass) {
    if (age == null || growthClass == null) {
      return null;
    }
    try {
      return WeanerPurchase.usualKg(age / 7, growthClass);
    } catch (OutsideDomainException e) {
      // nothing is usual of a pig younger or older than those that are sold
      return null;
    }
  }

  private static String asks(Group group, Double age) {
    List<String> asks = new ArrayList<>();
    if (group.source() == null) {
      asks.add("whether all were born on that one farm");
    }
    if (age == null) {
      asks.add("when they were born");
    }
    if (group.weanedAt() == null) {
      asks.add("when they were weaned and how long they have eaten dry feed");
    }
    if (!asks.isEmpty() && group.males() == Group.Males.CASTRATED) {
      asks.add("that all males are castrated and healed");
    }
    return String.join("; ", asks);
  }
}
