package swineherd.setups;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import swineherd.figures.Breed;
import swineherd.figures.GrowthClass;
import swineherd.rulebook.Rulebook;

/**
 * Random setups that can be read: countries, units, sizes and dates of all sorts, with answers
 * missing here and there. The same seed makes the same setups, so that a failure can be repeated;
 * put the seed in the name of the test.
 *
 * <pre>{@code
 * Setups.from(7).limit(100).forEach(setup -> assertThat(...));
 * }</pre>
 */
public final class Setups {
  private static final LocalDate FIRST = LocalDate.of(2027, 1, 1);

  private final SplittableRandom random;
  private boolean us;
  private boolean south;
  private LocalDate checkOn;

  private Setups(SplittableRandom random) {
    this.random = random;
  }

  /** Setups without end. */
  public static Stream<GeneratedSetup> from(long seed) {
    SplittableRandom seeds = new SplittableRandom(seed);
    return Stream.generate(() -> new Setups(seeds.split()).setup());
  }

  private GeneratedSetup setup() {
    us = random.nextBoolean();
    south = random.nextInt(4) == 0;
    checkOn = FIRST.plusDays(random.nextInt(600));
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("name", "Generated");
    root.put("checkOn", checkOn.toString());
    root.put("units", us ? "us" : "metric");
    root.set("place", place());
    ArrayNode pens = root.putArray("pens");
    int penCount = random.nextInt(3);
    for (int i = 0; i < penCount; i++) {
      pens.add(pen("pen " + i));
    }
    ArrayNode pigs = root.putArray("pigs");
    int groups = 1 + random.nextInt(3);
    ArrayNode diary = JsonNodeFactory.instance.arrayNode();
    for (int i = 0; i < groups; i++) {
      pigs.add(group("group " + i, penCount, diary));
    }
    root.set("feed", feed());
    if (random.nextInt(3) > 0) {
      root.set("money", money());
    }
    root.set("diary", diary);
    return new GeneratedSetup(root);
  }

  // ------------------------------------------------------------------------------- sections

  private ObjectNode place() {
    ObjectNode place = JsonNodeFactory.instance.objectNode();
    say(place, "country", country());
    double latitude = 25 + random.nextDouble(35);
    say(place, "latitude", "%.1f %s".formatted(latitude, south ? "S" : "N"));
    if (random.nextInt(3) > 0) {
      place.put("freezes", "yes");
      LocalDate frost = LocalDate.of(2027, 9, 1).plusDays(random.nextInt(100));
      say(place, "firstHardFrost", day(south ? frost.minusMonths(6) : frost));
      say(place, "frostSpread", random.nextInt(25) + " days");
    }
    int coldest = -25 + random.nextInt(35);
    say(place, "coldestMonth", degrees(coldest));
    say(place, "hottestMonth", degrees(16 + random.nextInt(22)));
    if (random.nextInt(5) == 0) {
      place.put("hardinessZone", (1 + random.nextInt(13)) + (random.nextBoolean() ? "a" : "b"));
    }
    say(place, "maritime", yesNo());
    say(place, "soil", one("wet-clay", "loam", "dry-loam", "sand"));
    say(place, "publicAccess", yesNo());
    return place;
  }

  private String country() {
    List<String> southern = List.of("australia", "new-zealand");
    List<String> all =
        Rulebook.questions().get("place.country").choices().keySet().stream()
            .filter(c -> southern.contains(c) == south)
            .toList();
    return all.get(random.nextInt(all.size()));
  }

  private ObjectNode pen(String name) {
    ObjectNode pen = JsonNodeFactory.instance.objectNode();
    pen.put("name", name);
    say(pen, "area", area(Math.exp(2.5 + random.nextDouble(6))));
    String ground =
        one(
            "slats",
            "concrete",
            "bedded-concrete",
            "deep-litter",
            "moved-pasture",
            "bare-dry",
            "bare-wet");
    say(pen, "ground", ground);
    if (random.nextBoolean()) {
      pen.put("pigsBefore", "yes");
      say(pen, "restedFor", random.nextInt(200) + " weeks");
    } else {
      say(pen, "pigsBefore", "no");
    }
    say(pen, "wormsKnown", yesNo());
    if (random.nextInt(5) > 0) {
      pen.set("fence", fence());
    }
    ObjectNode shelter = pen.putObject("shelter");
    if (random.nextInt(6) == 0) {
      shelter.put("kind", "none");
    } else {
      say(shelter, "kind", one("closed-hut", "three-sided", "open-front", "barn", "hoop"));
      say(shelter, "floorArea", area(1 + random.nextDouble(60)));
      say(shelter, "insulated", yesNo());
    }
    say(shelter, "bed", one("slats", "wet", "bare", "thin-straw", "straw", "deep-nest"));
    ObjectNode shade = pen.putObject("shade");
    if (random.nextBoolean()) {
      shade.put("kind", one("roof", "cloth", "trees", "barn"));
      say(shade, "area", area(1 + random.nextDouble(200)));
    }
    say(shade, "wallow", yesNo());
    ObjectNode water = pen.putObject("water");
    if (random.nextBoolean()) {
      water.put("kind", one("nipple", "bowl"));
      say(water, "flow", us ? "3 cups/min" : "0.7 L/min");
    }
    say(water, "drinkers", String.valueOf(random.nextInt(6)));
    say(water, "frostProof", yesNo());
    return pen;
  }

  private ObjectNode fence() {
    ObjectNode fence = JsonNodeFactory.instance.objectNode();
    String kind = one("electric", "solid", "both", "none");
    fence.put("kind", kind);
    if (kind.equals("solid") || kind.equals("both")) {
      say(fence, "solid", one("hog-panel", "woven-wire", "boards", "pallets", "barbed", "sheet"));
      say(fence, "height", length(0.5 + random.nextDouble(1)));
      say(fence, "gap", length(random.nextDouble(0.3)));
      say(fence, "footGuard", one("none", "buried", "apron", "hot-wire", "hard-floor"));
    }
    if (kind.equals("electric") || kind.equals("both")) {
      int strands = 1 + random.nextInt(3);
      say(fence, "strands", String.valueOf(strands));
      say(
          fence,
          "conductor",
          one("steel-2.5", "poly-6", "poly-copper", "netting", "aluminium-2.5"));
      say(fence, "length", length(20 + random.nextDouble(1500)));
      say(fence, "growth", one("clean", "medium", "heavy"));
      say(fence, "output", random.nextInt(1, 12) + " J");
      if (random.nextBoolean()) {
        fence.put("openVoltage", random.nextInt(7000, 10000) + " V");
        fence.put("loadVoltage", random.nextInt(2000, 6000) + " V");
      }
      say(fence, "endVoltage", random.nextInt(0, 9000) + " V");
      say(fence, "earthRods", String.valueOf(random.nextInt(6)));
    }
    return fence;
  }

  private ObjectNode group(String name, int pens, ArrayNode diary) {
    ObjectNode group = JsonNodeFactory.instance.objectNode();
    group.put("name", name);
    if (pens > 0) {
      group.put("pen", "pen " + random.nextInt(pens));
    }
    say(group, "count", one("1", "2", "3", "6", "12", "60"));
    List<Breed> breeds = Breed.all();
    Breed breed = breeds.get(random.nextInt(breeds.size()));
    boolean named = say(group, "breed", breed.key());
    if (named && random.nextInt(4) == 0) {
      group.put("crossedWith", breeds.get(random.nextInt(breeds.size())).key());
    }
    GrowthClass growth =
        named ? GrowthClass.named(breed.growthClass()) : GrowthClass.unknownBreed();
    String sex = one("gilts", "males", "mixed");
    if (say(group, "sex", sex) && !sex.equals("gilts")) {
      say(group, "males", one("castrated", "entire", "one-testis", "vaccinated"));
    }
    LocalDate arrives = checkOn.plusDays(random.nextInt(-200, 120));
    int age = 50 + random.nextInt(40);
    boolean dated = say(group, "arrives", arrives.toString());
    if (random.nextBoolean()) {
      say(group, "ageOnArrival", age + " days");
    } else {
      say(group, "born", arrives.minusDays(age).toString());
    }
    double weight = growth.eightWeekKg().likely() * (0.9 + random.nextDouble(0.5));
    if (say(group, "arrivalWeight", weight(weight))) {
      say(group, "weighedBy", one("scale", "tape", "guess"));
    }
    double target =
        growth.slaughterFromKg()
            + random.nextDouble() * (growth.slaughterToKg() - growth.slaughterFromKg());
    say(group, "targetWeight", weight(target));
    if (random.nextInt(4) == 0) {
      group.put("slaughterOn", arrives.plusDays(100 + random.nextInt(100)).toString());
      say(group, "booked", yesNo());
    }
    say(group, "trained", yesNo());
    if (dated && arrives.plusDays(30).isBefore(checkOn) && random.nextInt(3) == 0) {
      ObjectNode entry = diary.addObject();
      entry.put("on", arrives.plusDays(25).toString());
      entry.put("pigs", name);
      entry.put("did", one("weighed", "taped"));
      entry.put("weight", weight(weight * (1.1 + random.nextDouble(0.5))));
    }
    return group;
  }

  private ObjectNode feed() {
    ObjectNode feed = JsonNodeFactory.instance.objectNode();
    say(
        feed,
        "kind",
        one("self-feeder", "hand-fed", "restricted", "home-mix", "grain-or-scraps", "foraging"));
    say(feed, "protein", (12 + random.nextInt(9)) + " %");
    say(
        feed,
        "form",
        one("pellets", "ground", "home-mash", "whole-grain", "milk-or-fat-mash", "wet"));
    return feed;
  }

  private ObjectNode money() {
    ObjectNode money = JsonNodeFactory.instance.objectNode();
    for (String price :
        List.of(
            "weaner",
            "bulkDelivery",
            "vet",
            "travel",
            "insurance",
            "kill",
            "fence",
            "shelter",
            "trough",
            "energizer",
            "freezer")) {
      say(money, price, String.valueOf(random.nextInt(400)));
    }
    say(money, "bag", us ? "50 lb" : "25 kg");
    say(money, "bulkLoad", us ? "1000 lb" : "500 kg");
    for (String price : List.of("feed", "bulk", "straw", "cut", "meat")) {
      say(
          money,
          price,
          String.format(Locale.ROOT, "%.2f per %s", random.nextDouble(5), us ? "lb" : "kg"));
    }
    return money;
  }

  // ------------------------------------------------------------------------------- answers

  /** Answers three questions in four. */
  private boolean say(ObjectNode section, String name, String answer) {
    if (random.nextInt(4) == 0) {
      if (random.nextBoolean()) {
        section.put(name, "unknown");
      }
      return false;
    }
    section.put(name, answer);
    return true;
  }

  private String one(String... answers) {
    return answers[random.nextInt(answers.length)];
  }

  private String yesNo() {
    return random.nextBoolean() ? "yes" : "no";
  }

  private static String day(LocalDate day) {
    return day.getDayOfMonth() + " " + day.getMonth().name().toLowerCase(Locale.ROOT);
  }

  private String weight(double kg) {
    return us ? number(kg / 0.45359237) + " lb" : number(kg) + " kg";
  }

  private String length(double m) {
    return us ? number(m / 0.3048) + " ft" : number(m) + " m";
  }

  private String area(double m2) {
    return us ? number(m2 / 0.09290304) + " sq ft" : number(m2) + " m2";
  }

  private String degrees(double degC) {
    return us ? number(degC * 9 / 5 + 32) + " F" : number(degC) + " C";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
