package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Nutrients;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Rations;
import swineherd.figures.Signal;
import swineherd.rulebook.Table;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * Nitrogen and phosphorus that pigs leave on the earth of a pen in a year. There is one for each
 * pen that has a {@link Grass} and whose pigs have a course of growth; feed that was not said is
 * taken as {@link Course} takes it, its protein as what they need.
 *
 * @param pen name of the pen
 * @param nitrogen kg
 * @param load kg of nitrogen a hectare
 * @param signal green within the limit of the European Union, red above twice that
 * @param times how many times that limit it is
 * @param needed m2 over which it would stay within the limit
 * @param phosphorus kg
 * @param again whether pigs or their manure were on it before and no season has passed since
 */
public record DungLoad(
    String pen,
    double nitrogen,
    double load,
    Signal signal,
    double times,
    double needed,
    double phosphorus,
    boolean again,
    List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Course> courses, List<Outlook> grass) {
    List<Stay> stays = Stay.of(setup, courses);
    List<Outlook> all = new ArrayList<>();
    for (Outlook outlook : grass) {
      Grass ground = (Grass) outlook;
      List<Stay> there = Stay.in(ground.pen(), stays);
      if (there.stream().allMatch(s -> s.course() != null)) {
        try {
          all.add(of(setup, ground, there));
        } catch (OutsideDomainException e) {
          all.add(new NotWorkedOut("nitrogen", ground.pen(), e.getMessage(), ground.grounds()));
        }
      }
    }
    return all;
  }

  private static DungLoad of(Setup setup, Grass ground, List<Stay> there) {
    double nitrogen = 0;
    double phosphorus = 0;
    for (Stay stay : there) {
      LocalDate first = stay.first();
      LocalDate yearOn = first.plusYears(1);
      LocalDate last = stay.to().isAfter(yearOn) ? yearOn : stay.to();
      double kg = DailyFeed.of(stay).givenInAll();
      double gain = Math.max(0, stay.weightOn(last) - stay.weightOn(first));
      double mean = (stay.weightOn(first) + stay.weightOn(last)) / 2;
      nitrogen += stay.count() * Nutrients.nitrogen(kg, protein(setup, stay, mean), gain);
      phosphorus += stay.count() * Nutrients.phosphorus(kg, Rations.diet(mean).phosphorus(), gain);
    }
    double load = Nutrients.load(nitrogen, ground.area());
    double needed = Nutrients.areaForNitrogen(nitrogen);
    return new DungLoad(
        ground.pen(),
        nitrogen,
        load,
        Nutrients.signal(load, false),
        needed / ground.area(),
        needed,
        phosphorus,
        again(setup.pen(ground.pen()).orElseThrow()),
        new Grounds()
            .and(ground.grounds())
            .said("feed.protein", setup.feed().protein())
            .said("feed.kind", setup.feed().kind())
            .list());
  }

  private static boolean again(Pen pen) {
    double season = Table.named("ground-limits").row("crop-between").number("value");
    return Boolean.TRUE.equals(pen.pigsBefore())
        && (pen.restedFor() == null || pen.restedFor() < season);
  }

  private static double protein(Setup setup, Stay stay, double weight) {
    if (setup.feed().protein() != null) {
      return setup.feed().protein();
    }
    Group.Males males = stay.group().males();
    boolean entire = males != null && males != Group.Males.CASTRATED;
    return Rations.protein(weight, stay.growthClass().key(), entire).likely();
  }
}
