package swineherd.outlook;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The way to pigs that a cold winter finds at the place, for feed, vet and trailer. At most one.
 *
 * @param chance that pigs are there at the first hard frost, 0 to 1; of the likeliest pen
 * @param begun whether they are there and the cold season has begun
 * @param by day by which all is to be tried out, not before the day of the check
 */
public record WinterWay(double chance, boolean begun, LocalDate by, List<String> grounds)
    implements Outlook {

  static Optional<WinterWay> of(List<WinterPen> pens) {
    return pens.stream()
        .filter(WinterPen::cold)
        .max(Comparator.comparingDouble(WinterPen::chance))
        .map(pen -> new WinterWay(pen.chance(), pen.begun(), pen.testBy(), pen.grounds()));
  }
}
