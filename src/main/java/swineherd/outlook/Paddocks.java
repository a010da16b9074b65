package swineherd.outlook;

import java.time.LocalDate;
import java.util.List;
import swineherd.figures.Pasture;
import swineherd.figures.Signal;

/**
 * How grass is divided so that pigs move on and come back to it rested. There is one for each pen
 * on earth of which grass is expected.
 *
 * @param pen name of the pen
 * @param paddocks how many, the one the pigs are on counted
 * @param each m2 of one, where all of them together carry these pigs as long as they stay
 * @param fits whether the pen is as large as that
 * @param stay days on one
 * @param first day of the first move, or of the next from the day of the check on
 * @param second the move after that
 * @param back day on which they come to the first one again
 */
public record Paddocks(
    String pen,
    int paddocks,
    double each,
    boolean fits,
    double stay,
    LocalDate first,
    LocalDate second,
    LocalDate back,
    List<String> grounds)
    implements Outlook {

  static List<Outlook> of(List<Outlook> grass) {
    return grass.stream()
        .filter(Grass.class::isInstance)
        .map(Grass.class::cast)
        .filter(g -> !g.lot())
        .map(g -> (Outlook) of(g))
        .toList();
  }

  private static Paddocks of(Grass grass) {
    Pasture.Turn turn = Pasture.usualTurn();
    int paddocks = turn.paddocks();
    LocalDate first = grass.came().plusDays(turn.stay());
    return new Paddocks(
        grass.pen(),
        paddocks,
        Math.max(grass.needed(), grass.area()) / paddocks,
        grass.load() == Signal.GREEN,
        turn.stay(),
        first,
        first.plusDays(turn.stay()),
        grass.came().plusDays((long) turn.stay() * paddocks),
        grass.grounds());
  }
}
