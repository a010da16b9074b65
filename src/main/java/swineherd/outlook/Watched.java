package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import swineherd.figures.Breed;
import swineherd.figures.Triage;
import swineherd.figures.VitalSigns;
import swineherd.figures.WaterLost;
import swineherd.rulebook.Card;
import swineherd.rulebook.Referral;
import swineherd.rulebook.Rulebook;
import swineherd.rulebook.Table;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Feed;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.setup.Sign;

/** Works out {@link Noted} and {@link Seen} from the signs that were written down. */
final class Watched {
  /** Under this age pigs bear illness worst, days; judgement. */
  private static final int YOUNG = 84;

  /** Items that gather what a group shows by how urgent it is, the first for the most urgent. */
  private static final Set<String> BY_LEVEL =
      Set.of("health.authority", "health.now", "health.today", "health.this-week");

  /** The item that asks what it is that was noted. */
  private static final String WHAT = "health.find-out-sign";

  private static final String DEAD = "sudden-death";

  private final Setup setup;
  private final List<Course> courses;

  private Watched(Setup setup, List<Course> courses) {
    this.setup = setup;
    this.courses = courses;
  }

  /** For each group with a sign what is seen on it, and each of its signs. */
  static List<Outlook> of(Setup setup, List<Course> courses) {
    return new Watched(setup, courses).all();
  }

  /** The group a sign is about: the only one where there is one; empty if it is not known. */
  static String group(Setup setup, Sign sign) {
    if (sign.pigs() != null) {
      return sign.pigs();
    }
    return setup.pigs().size() == 1 ? setup.pigs().get(0).name() : "";
  }

  /** The signs of each group by their place in the setup; also those of which nobody said what. */
  static Map<String, List<Integer>> byGroup(Setup setup) {
    Map<String, List<Integer>> byGroup = new LinkedHashMap<>();
    for (int i = 0; i < setup.signs().size(); i++) {
      byGroup.computeIfAbsent(group(setup, setup.signs().get(i)), g -> new ArrayList<>()).add(i);
    }
    return byGroup;
  }

  /** What one entry shows: its sign, and what its temperature and breaths say. */
  static Set<String> shown(Setup setup, Sign sign) {
    Set<String> shown = new LinkedHashSet<>();
    if (sign.sign() != null) {
      shown.add(sign.sign());
    }
    VitalSigns.Kind kind = kind(setup, sign);
    if (sign.temperature() != null) {
      double t = sign.temperature();
      switch (VitalSigns.temperature(kind, t)) {
        case EMERGENCY -> shown.add(t < VitalSigns.normal(kind) ? "chill" : "high-fever");
        case SAME_DAY -> shown.add("fever");
        default -> {}
      }
    }
    if (sign.breaths() != null) {
      // as in cool air, which is the stricter: what heat explains is for the rules
      switch (VitalSigns.breathing(VitalSigns.Kind.GROWER, sign.breaths(), false, true)) {
        case EMERGENCY -> shown.add("panting");
        case SAME_DAY -> shown.add("thumps");
        default -> {}
      }
    }
    return shown;
  }

  private static VitalSigns.Kind kind(Setup setup, Sign sign) {
    return setup
        .group(group(setup, sign))
        .filter(g -> g.breed() != null && g.crossedWith() == null)
        .filter(g -> Breed.named(g.breed()).growthClass().equals("pot-bellied"))
        .map(g -> VitalSigns.Kind.POT_BELLIED)
        .orElse(VitalSigns.Kind.GROWER);
  }

  private List<Outlook> all() {
    List<Outlook> all = new ArrayList<>();
    byGroup(setup).forEach((pigs, at) -> all.addAll(of(pigs, at)));
    return all;
  }

  private List<Outlook> of(String pigs, List<Integer> at) {
    Map<String, Referral> levels = new LinkedHashMap<>();
    Set<String> several = new LinkedHashSet<>();
    Map<String, List<String>> assumed = new LinkedHashMap<>();
    Grounds grounds = new Grounds();
    for (int i : at) {
      Sign sign = setup.signs().get(i);
      Integer count = count(pigs, sign);
      Set<String> shown = shown(setup, sign);
      if (shown.contains(DEAD) && deadOnPlace() > 1) {
        shown.add("several-dead");
      }
      for (String key : shown) {
        if (count == null || count > 1) {
          several.add(key);
        }
        Triage.Circumstances known = known(pigs, sign, count);
        Referral level = Triage.of(key).level(known);
        levels.merge(key, level, Triage::higher);
        assumed
            .computeIfAbsent(key, k -> new ArrayList<>())
            .addAll(assumed(key, known, sign, count, age(pigs)));
      }
      if (!shown.isEmpty()) {
        grounds.and("signs[" + i + "]", "sign", "count", "since", "temperature");
        grounds.said("signs[" + i + "].breaths", sign.breaths());
      }
    }
    List<Outlook> all = new ArrayList<>();
    if (!levels.isEmpty()) {
      levels.forEach(
          (sign, level) ->
              all.add(
                  new Noted(pigs, sign, level, toldBy(sign, level), calledBy(level), List.of())));
      // of lesser signs it makes no difference to the call
      Referral most = levels.values().stream().reduce(Referral.NONE, Triage::higher);
      assumed.keySet().removeIf(sign -> levels.get(sign) != most);
      List<String> taken = assumed.values().stream().flatMap(List::stream).distinct().toList();
      all.add(seen(pigs, levels.keySet(), several, taken, grounds));
    }
    return all;
  }

  private Triage.Circumstances known(String pigs, Sign sign, Integer count) {
    Long days =
        sign.since() == null ? null : ChronoUnit.DAYS.between(sign.since(), setup.checkOn());
    return new Triage.Circumstances(
        count == null || count > 1, days, sign.temperature() != null, isYoung(pigs));
  }

  /** What was not said and makes the level higher. */
  private static List<String> assumed(
      String key, Triage.Circumstances known, Sign sign, Integer count, Long age) {
    Triage triage = Triage.of(key);
    List<String> assumed = new ArrayList<>();
    Triage.Circumstances one =
        new Triage.Circumstances(false, known.days(), known.measured(), known.young());
    if (count == null && triage.level(one) != triage.level(known)) {
      assumed.add("how many, taken as several");
    }
    Triage.Circumstances today =
        new Triage.Circumstances(known.several(), 0L, known.measured(), known.young());
    if (sign.since() == null && triage.level(today) != triage.level(known)) {
      assumed.add("since when, taken as for days");
    }
    Triage.Circumstances cool =
        new Triage.Circumstances(known.several(), known.days(), true, known.young());
    if (sign.temperature() == null && triage.level(cool) != triage.level(known)) {
      assumed.add("the temperature, taken as fever");
    }
    Triage.Circumstances grown =
        new Triage.Circumstances(known.several(), known.days(), known.measured(), false);
    if (age == null && triage.level(grown) != triage.level(known)) {
      assumed.add("their age, taken as under 12 weeks");
    }
    return assumed;
  }

  /** How many show it; null if nobody said and there is more than one in the group. */
  private Integer count(String pigs, Sign sign) {
    if (sign.count() != null) {
      return sign.count();
    }
    Integer all = setup.group(pigs).map(Group::count).orElse(null);
    return all != null && all == 1 ? all : null;
  }

  /** Dead pigs of all groups; where nobody said how many they count as two. */
  private int deadOnPlace() {
    int now =
        setup.signs().stream()
            .filter(s -> DEAD.equals(s.sign()))
            .map(s -> count(group(setup, s), s))
            .mapToInt(c -> c == null ? 2 : c)
            .sum();
    return now == 0 ? 0 : now + diedBefore();
  }

  /**
   * Dead pigs of the diary within two days, but for those of a day on which one is noted as a sign.
   */
  private int diedBefore() {
    LocalDate today = setup.checkOn();
    long days = Math.round(Table.named("diary").row("deaths-together").number("value"));
    Set<LocalDate> noted = new HashSet<>();
    setup.signs().stream().filter(s -> DEAD.equals(s.sign())).forEach(s -> noted.add(s.since()));
    return setup.diary().stream()
        .filter(d -> d.did() == DiaryEntry.Did.DIED && d.on() != null)
        .filter(d -> !d.on().isAfter(today) && !d.on().isBefore(today.minusDays(days)))
        .filter(d -> !noted.contains(d.on()) && !noted.contains(null))
        .mapToInt(DiaryEntry::countOrOne)
        .sum();
  }

  private boolean isYoung(String pigs) {
    Long age = age(pigs);
    return age == null || age < YOUNG;
  }

  /** Age of a group, days; null if it is not known. */
  private Long age(String pigs) {
    Group group = setup.group(pigs).orElse(null);
    if (group == null) {
      return null;
    }
    LocalDate born = group.born();
    if (born == null && group.arrives() != null && group.ageOnArrival() != null) {
      born = group.arrives().minusDays(Math.round(group.ageOnArrival()));
    }
    return born == null ? null : ChronoUnit.DAYS.between(born, setup.checkOn());
  }

  /** The items that tell a sign along with their own and call no later than it asks. */
  private static Set<String> toldBy(String sign, Referral level) {
    Set<String> ids = new LinkedHashSet<>();
    for (Card card : Rulebook.cards().values()) {
      if (card.covers().contains(sign) && card.referral().compareTo(level) >= 0) {
        ids.add(card.id());
      }
    }
    return Set.copyOf(ids);
  }

  /** The items about several signs together that call sooner, and those of single signs. */
  private static Set<String> calledBy(Referral level) {
    Set<String> ids = new LinkedHashSet<>();
    if (level.compareTo(Referral.VET_NOW) >= 0) {
      return Set.of(); // it keeps its own place at the top
    }
    for (Card card : Rulebook.cards().values()) {
      boolean ofSigns =
          !card.covers().isEmpty() || BY_LEVEL.contains(card.id()) || card.id().equals(WHAT);
      if (ofSigns && card.referral().compareTo(level) > 0) {
        ids.add(card.id());
      }
    }
    return Set.copyOf(ids);
  }

  private Seen seen(
      String pigs, Set<String> shown, Set<String> several, List<String> assumed, Grounds grounds) {
    Group group = setup.group(pigs).orElse(null);
    double weight =
        WaterOut.lightest(
            Stay.of(setup, courses).stream()
                .filter(s -> group == null || s.group().name().equals(pigs))
                .toList(),
            setup.checkOn());
    List<Feed.Scraps> scraps = setup.feed().scraps() == null ? List.of() : setup.feed().scraps();
    boolean fed = scraps.contains(Feed.Scraps.KITCHEN) || scraps.contains(Feed.Scraps.MEAT);
    if (fed) {
      grounds.and("feed", "scraps");
    }
    List<Died> died = Died.of(setup);
    died.forEach(d -> grounds.and(d.grounds()));
    LocalDate slaughterOn = slaughterOn(group);
    if (slaughterOn != null) {
      grounds.and("pigs[" + setup.pigs().indexOf(group) + "]", "slaughterOn");
    }
    return new Seen(
        pigs,
        pigs.isEmpty() ? "Pigs" : pigs,
        Set.copyOf(shown),
        Set.copyOf(several),
        !died.isEmpty(),
        newPigs(),
        frost(group),
        WaterLost.litresPerHour(weight),
        weight,
        fed,
        setup.place().country(),
        slaughterOn,
        setup.checkOn().plusDays(1),
        assumed,
        grounds.list());
  }

  private LocalDate slaughterOn(Group group) {
    LocalDate day = group == null ? null : group.slaughterOn();
    return day == null || day.isBefore(setup.checkOn()) ? null : day;
  }

  private boolean newPigs() {
    long days = Math.round(Table.named("quarantine").row("default").number("days"));
    LocalDate today = setup.checkOn();
    return setup.pigs().stream()
        .map(Group::arrives)
        .anyMatch(a -> a != null && !a.isAfter(today) && !a.isBefore(today.minusDays(days)));
  }

  private boolean frost(Group group) {
    boolean cold =
        !Boolean.FALSE.equals(setup.place().freezes())
            && !new Weather(setup.place()).isWarm(setup.checkOn());
    Pen pen = group == null ? null : setup.pen(group.pen()).orElse(null);
    return cold && (pen == null || !Boolean.TRUE.equals(pen.water().frostProof()));
  }
}
