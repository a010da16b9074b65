package swineherd.outlook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import swineherd.figures.Band;
import swineherd.figures.SnowLoad;
import swineherd.figures.Winter;
import swineherd.figures.WinterClass;
import swineherd.setup.Setup;
import swineherd.setup.Shelter;

/**
 * Wet snow on the roof of a light shelter. There is one for each {@link WinterPen} in a hoop house
 * in a winter of class C or harder.
 *
 * @param pen name of the pen
 * @param chance that pigs are there at the first hard frost, 0 to 1
 * @param load of 15 cm of wet snow on the whole roof, kg; by the floor of the shelter, or by the
 *     room they need where that is not known
 * @param by day by which to have it braced, not before the day of the check
 */
public record SnowRoof(String pen, double chance, Band load, LocalDate by, List<String> grounds)
    implements Outlook {

  /** At so much wet snow it is to be cleared, m: judgement. */
  private static final double CLEAR_AT = 0.15;

  static Optional<SnowRoof> of(Setup setup, int index, WinterPen pen) {
    Shelter shelter = setup.pens().get(index).shelter();
    if (shelter.kind() != Shelter.Kind.HOOP || !pen.winterClass().atLeast(WinterClass.C)) {
      return Optional.empty();
    }
    double area = shelter.floorArea() == null ? pen.bedArea() : shelter.floorArea();
    return Optional.of(
        new SnowRoof(
            pen.pen(),
            pen.chance(),
            SnowLoad.of(CLEAR_AT, SnowLoad.Snow.WET).times(area),
            WinterPen.by(Winter.REPAIRS, pen.winterClass(), pen.frost().early(), setup.checkOn()),
            new Grounds()
                .and(pen.grounds())
                .said("pens[" + index + "].shelter.kind", shelter.kind())
                .list()));
  }
}
