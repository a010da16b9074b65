package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import swineherd.figures.OutsideDomainException;
import swineherd.setup.Place;
import swineherd.setup.Setup;

/** Puts together what there is to know of the winter: climate, groups, pens. */
final class Wintering {
  /** The figure that a rule sees in a {@link NotWorkedOut}. */
  private static final String WINTER = "winter";

  private final Setup setup;
  private final List<Outlook> all = new ArrayList<>();

  private Wintering(Setup setup) {
    this.setup = setup;
  }

  static List<Outlook> of(Setup setup, List<Course> courses) {
    Wintering wintering = new Wintering(setup);
    Place place = setup.place();
    List<String> grounds =
        new Grounds()
            .said("place.latitude", place.latitude())
            .said("place.firstHardFrost", place.firstHardFrost())
            .said("place.frostSpread", place.frostSpread())
            .said("place.coldestMonth", place.coldestMonth())
            .said("place.hardinessZone", place.hardinessZone())
            .list();
    wintering
        .tried("", grounds, () -> WinterClimate.of(place))
        .ifPresent(climate -> wintering.in(climate, courses));
    return wintering.all;
  }

  private void in(WinterClimate climate, List<Course> courses) {
    all.add(climate);
    if (climate.kind() == WinterClimate.Kind.MILD) {
      return;
    }
    LocalDate today = setup.checkOn();
    List<WinterStay> stays = new ArrayList<>();
    for (Course course : courses) {
      if (course.slaughterOn() != null && course.slaughterOn().isBefore(today)) {
        continue;
      }
      tried(course.pigs(), course.grounds(), () -> WinterStay.of(course, climate, today))
          .ifPresent(
              stay -> {
                stays.add(stay);
                tried(course.pigs(), stay.grounds(), () -> Deadline.of(setup, course, stay))
                    .flatMap(deadline -> deadline)
                    .ifPresent(all::add);
              });
    }
    all.addAll(stays);
    List<WinterPen> pens = new ArrayList<>();
    for (int i = 0; i < setup.pens().size(); i++) {
      pen(i, climate, courses, stays).ifPresent(pens::add);
    }
    all.addAll(pens);
    WinterWay.of(pens).ifPresent(all::add);
  }

  private Optional<WinterPen> pen(
      int i, WinterClimate climate, List<Course> courses, List<WinterStay> stays) {
    String name = setup.pens().get(i).name();
    List<String> known = stays.stream().map(WinterStay::pigs).toList();
    List<Course> here =
        courses.stream().filter(c -> name.equals(c.pen()) && known.contains(c.pigs())).toList();
    int count = here.stream().mapToInt(Course::count).sum();
    for (Course course : here) {
      tried(name, course.grounds(), () -> FrostyArrival.of(setup, i, course, climate, count))
          .flatMap(arrival -> arrival)
          .ifPresent(all::add);
    }
    List<WinterPen.Winterer> winterers = WinterPen.winterers(name, courses, stays);
    if (winterers.isEmpty()) {
      return Optional.empty();
    }
    List<String> grounds = winterers.get(0).stay().grounds();
    Optional<WinterPen> pen =
        tried(name, grounds, () -> WinterPen.of(setup, i, winterers, climate));
    Optional<WinterLying> lying =
        tried(name, grounds, () -> WinterLying.of(setup, i, winterers, climate))
            .flatMap(found -> found);
    lying.ifPresent(all::add);
    pen.ifPresent(found -> inPen(i, found, lying.orElse(null), winterers, climate));
    return pen;
  }

  /** What else a winter asks of a pen and of those in it. */
  private void inPen(
      int i,
      WinterPen pen,
      WinterLying lying,
      List<WinterPen.Winterer> winterers,
      WinterClimate climate) {
    double extra = lying == null ? 0 : lying.extraFeed().likely();
    tried(pen.pen(), pen.grounds(), () -> WinterStores.of(setup, pen, winterers, extra))
        .flatMap(stores -> stores)
        .ifPresent(all::add);
    SnowRoof.of(setup, i, pen).ifPresent(all::add);
    WinterDark.of(setup, i, pen, winterers, climate.hemisphere()).ifPresent(all::add);
    if (pen.cold()) {
      for (WinterPen.Winterer group : winterers) {
        tried(pen.pen(), pen.grounds(), () -> WinterLeave.of(setup, group, climate))
            .flatMap(leave -> leave)
            .ifPresent(all::add);
      }
    }
  }

  /** What lies outside what the figures are good for is said to be so. */
  private <T> Optional<T> tried(String about, List<String> grounds, Supplier<T> figure) {
    try {
      return Optional.of(figure.get());
    } catch (OutsideDomainException e) {
      all.add(new NotWorkedOut(WINTER, about, e.getMessage(), grounds));
      return Optional.empty();
    }
  }
}
