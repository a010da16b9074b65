package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.MeatSafety;
import swineherd.figures.SlaughterDay;
import swineherd.figures.SlaughterLaw;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * What the law of the place says of slaughter and meat, and whether the weather lets a carcass
 * hang. One for each group that has not gone.
 *
 * @param pigs name of the group
 * @param day the day set; null if there is none
 * @param atHome whether they are slaughtered at home; null if nobody said
 * @param law what is known of the law there
 * @param hanging what the weather makes of a carcass at home; null if the forecast is not known and
 *     no cooler is named
 * @param air highest temperature forecast, degC; null if not known
 */
public record HomeKill(
    String pigs,
    LocalDate day,
    Boolean atHome,
    SlaughterLaw law,
    SlaughterDay.Hanging hanging,
    Double air,
    List<String> grounds)
    implements Outlook {

  private static final double THIN_CM = 15;
  private static final double THICK_CM = 30;

  /** Whether no cooler is named and the weather is too warm, or not known. */
  public boolean cannotChill() {
    return Boolean.TRUE.equals(atHome)
        && (hanging == null || hanging == SlaughterDay.Hanging.REFUSED);
  }

  /** Whose texts it rests on, as the end of a sentence. */
  public String rests() {
    return law.known()
        ? "So it stands in short in: " + law.sources() + ". Check the current text."
        : "No law of your place is known here, so ask before you plan on it.";
  }

  /** Inside temperature for mince, degC. */
  public double cookGround() {
    return MeatSafety.cookToC(MeatSafety.Meat.GROUND);
  }

  /** Inside temperature for whole cuts, degC. */
  public double cookWhole() {
    return MeatSafety.cookToC(MeatSafety.Meat.WHOLE_CUT);
  }

  /** Inside temperature that is held for two minutes, degC. */
  public double cookTwoMinutes() {
    return MeatSafety.cookForTwoMinutesC();
  }

  /** Warmest freezing that counts, degC. */
  public double freeze() {
    return MeatSafety.warmestFreezingC();
  }

  /** Days of it for pieces up to 15 cm thick. */
  public int freezeThin() {
    return MeatSafety.freezingDays(freeze(), THIN_CM).orElseThrow();
  }

  /** Days of it for thicker pieces. */
  public int freezeThick() {
    return MeatSafety.freezingDays(freeze(), THICK_CM).orElseThrow();
  }

  static List<Outlook> of(Setup setup) {
    List<Outlook> all = new ArrayList<>();
    SlaughterLaw law = SlaughterLaw.of(setup.place().country(), setup.place().state());
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      if (!setup.isGone(group)) {
        String path = "pigs[" + i + "].";
        List<String> grounds =
            new Grounds()
                .said(path + "slaughterAt", group.slaughterAt())
                .said(path + "meatFor", group.meatFor())
                .said(path + "cooler", group.cooler())
                .said(path + "forecast", group.forecast())
                .said("place.country", setup.place().country())
                .said("place.state", setup.place().state())
                .list();
        all.add(
            new HomeKill(
                group.name(),
                group.slaughterOn(),
                group.slaughterAt() == null ? null : group.slaughterAt() == Group.SlaughterAt.HOME,
                law,
                hanging(group),
                group.forecast(),
                grounds));
      }
    }
    return all;
  }

  /** The night is taken to be as warm as the day, since only that was asked. */
  private static SlaughterDay.Hanging hanging(Group group) {
    if (Boolean.TRUE.equals(group.cooler())) {
      return SlaughterDay.Hanging.COOLER;
    }
    return group.forecast() == null
        ? null
        : SlaughterDay.hanging(group.forecast(), group.forecast(), false);
  }
}
