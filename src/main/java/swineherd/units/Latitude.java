package swineherd.units;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a latitude as a person writes it: {@code 45 N}, {@code 33.9 S}, {@code -33.9}. */
public final class Latitude {
  private static final Pattern FORM =
      Pattern.compile("([-−]?\\d{1,2}(?:\\.\\d+)?)\\s*(?:°|deg|degrees)?\\s*(n|north|s|south)?");

  private Latitude() {}

  /**
   * Degrees, negative south of the equator.
   *
   * @throws UnreadableException if it is none
   */
  public static double parse(String written) {
    Matcher form = FORM.matcher(written.strip().toLowerCase(Locale.ROOT));
    if (!form.matches()) {
      throw unreadable(written);
    }
    double degrees = Double.parseDouble(form.group(1).replace('−', '-'));
    if (form.group(2) != null && degrees < 0) {
      throw unreadable(written);
    }
    return form.group(2) != null && form.group(2).startsWith("s") ? -degrees : degrees;
  }

  private static UnreadableException unreadable(String written) {
    return new UnreadableException(
        "\"" + written.strip() + "\" is not a latitude", "write it like 45 N, 33.9 S or -33.9");
  }
}
