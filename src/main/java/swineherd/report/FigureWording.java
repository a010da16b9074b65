package swineherd.report;

import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import swineherd.figures.Band;
import swineherd.figures.DateBand;
import swineherd.outlook.sheet.Figure;
import swineherd.outlook.sheet.Phrase;
import swineherd.units.Dates;
import swineherd.units.Dimension;
import swineherd.units.Display;
import swineherd.units.UnitSystem;

/** Says figures in the keeper's units. */
final class FigureWording {
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\w+)\\}");
  private static final Pattern LONG_NUMBER = Pattern.compile("-?\\d+\\.\\d+");
  private static final int MOST_PATHS = 3;
  private static final double HECTARES_OF_AN_ACRE = Dimension.AREA.toBase(1, "ac") / 10_000;

  private final UnitSystem units;

  FigureWording(UnitSystem units) {
    this.units = units;
  }

  /** A phrase with its figures filled in. */
  String fill(Phrase phrase) {
    Matcher found = PLACEHOLDER.matcher(phrase.text());
    StringBuilder filled = new StringBuilder();
    while (found.find()) {
      Figure figure = phrase.figures().get(found.group(1));
      found.appendReplacement(
          filled, Matcher.quoteReplacement(figure == null ? "?" : words(figure)));
    }
    return found.appendTail(filled).toString();
  }

  /** A figure as it stands in a table. */
  String words(Figure figure) {
    if (figure instanceof Figure.Amount amount) {
      return amount(amount);
    }
    if (figure instanceof Figure.Plain plain) {
      return (number(plain.band()) + " " + plain.unit()).strip();
    }
    if (figure instanceof Figure.Price price) {
      return price(price);
    }
    if (figure instanceof Figure.Dates dates) {
      return dates(dates.dates());
    }
    if (figure instanceof Figure.Day day) {
      return Dates.words(day.day());
    }
    if (figure instanceof Figure.Count count) {
      return count.count() + " " + (count.count() == 1 ? count.one() : count.many());
    }
    if (figure instanceof Figure.Chance chance) {
      return Wording.chance(chance.chance());
    }
    if (figure instanceof Figure.Missing missing) {
      return needs(missing.paths());
    }
    if (figure instanceof Figure.Beyond beyond) {
      return "not known: " + rounded(beyond.why());
    }
    return ((Figure.Words) figure).words();
  }

  private String amount(Figure.Amount amount) {
    Band band = amount.band();
    if (amount.per() == Figure.Per.HECTARE && units == UnitSystem.US) {
      band = band.times(HECTARES_OF_AN_ACRE);
    }
    String shown = Display.span(band.low(), band.likely(), band.high(), amount.dimension(), units);
    return switch (amount.per()) {
      case ALL -> shown;
      case DAY -> shown + " a day";
      case HECTARE -> shown + (units == UnitSystem.US ? " per acre" : " per ha");
    };
  }

  private String price(Figure.Price price) {
    if (!price.perKg()) {
      return money(price.amount());
    }
    return units == UnitSystem.US
        ? money(price.amount() * Dimension.MASS.toBase(1, "lb")) + " per lb"
        : money(price.amount()) + " per kg";
  }

  /** Money with two decimals and no currency. */
  static String money(double amount) {
    return String.format(Locale.ROOT, "%.2f", amount);
  }

  private static String dates(DateBand dates) {
    String likely = Dates.words(dates.likely());
    if (dates.early().equals(dates.late())) {
      return likely;
    }
    boolean oneYear = dates.early().getYear() == dates.late().getYear();
    return likely
        + " ("
        + (oneYear ? Dates.words(MonthDay.from(dates.early())) : Dates.words(dates.early()))
        + " to "
        + (oneYear ? Dates.words(MonthDay.from(dates.late())) : Dates.words(dates.late()))
        + ")";
  }

  private static String number(Band band) {
    String likely = plain(band.likely());
    return band.low() == band.high()
        ? likely
        : likely + " (" + plain(band.low()) + " to " + plain(band.high()) + ")";
  }

  private static String plain(double value) {
    double size = Math.abs(value);
    if (size >= 10 || value == Math.rint(value)) {
      return Long.toString(Math.round(value));
    }
    return String.format(Locale.ROOT, size >= 1 ? "%.1f" : "%.2f", value);
  }

  /** The first few paths; all of them stand in the other formats. */
  private static String needs(List<String> paths) {
    String first = String.join(", ", paths.subList(0, Math.min(MOST_PATHS, paths.size())));
    int more = paths.size() - MOST_PATHS;
    return "needs " + first + (more > 0 ? " and " + more + " more" : "");
  }

  /** The message of a refusal with no more digits than a keeper can use. */
  static String rounded(String why) {
    return LONG_NUMBER.matcher(why).replaceAll(found -> plain(Double.parseDouble(found.group())));
  }
}
