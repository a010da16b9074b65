package swineherd.units;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * A kind of quantity, and the units a keeper may write it in. The program computes in the first
 * unit of each, which {@link #base()} names. Factors are exact by definition (international yard
 * and pound, 1959; US liquid gallon of 231 cubic inches; imperial gallon of 4.54609 L), except that
 * a month is taken as 30.4375 days and a year as 365.25.
 */
public enum Dimension {
  @JsonProperty("mass")
  MASS(
      "kg",
      "14 kg or 30 lb",
      u("kg", 1, "kgs", "kilo", "kilos", "kilogram", "kilograms"),
      u("g", 0.001, "gram", "grams"),
      u("t", 1000, "tonne", "tonnes"),
      u("lb", 0.45359237, "lbs", "pound", "pounds"),
      u("st", 6.35029318, "stone", "stones"),
      u("oz", 0.028349523125, "ounce", "ounces"),
      u("short ton", 907.18474, "short tons", "us ton", "us tons")),
  @JsonProperty("length")
  LENGTH(
      "m",
      "90 cm, 3 ft or 120 m",
      u("m", 1, "metre", "metres", "meter", "meters"),
      u("cm", 0.01, "centimetre", "centimetres", "centimeters"),
      u("mm", 0.001),
      u("km", 1000, "kilometre", "kilometres", "kilometers"),
      u("ft", 0.3048, "foot", "feet", "'"),
      u("in", 0.0254, "inch", "inches", "\""),
      u("yd", 0.9144, "yard", "yards"),
      u("mi", 1609.344, "mile", "miles")),
  @JsonProperty("area")
  AREA(
      "m2",
      "400 m2, 20 x 40 ft or 0.5 ac",
      u("m2", 1, "m²", "sqm", "sq m", "square metres", "square meters", "square metre"),
      u("ha", 10000, "hectare", "hectares"),
      u("ac", 4046.8564224, "acre", "acres"),
      u("sq ft", 0.09290304, "ft²", "sqft", "square feet", "square foot"),
      u("sq yd", 0.83612736, "yd²", "square yards")),
  @JsonProperty("volume")
  VOLUME(
      "L",
      "200 L or 50 gal",
      u("L", 1, "litre", "litres", "liter", "liters"),
      u("ml", 0.001),
      u("m3", 1000, "m³"),
      u("gal", 3.785411784, "gallon", "gallons", "us gal"),
      u("fl oz", 0.0295735295625, "fluid ounce", "fluid ounces"),
      u("imp gal", 4.54609, "imperial gallon", "imperial gallons"),
      u("cu ft", 28.316846592, "ft³", "cubic feet")),
  /** Inside room of a freezer or bin, which US readers count in cubic feet, not gallons. */
  @JsonProperty("capacity")
  CAPACITY(
      "L",
      "200 L or 7 cu ft",
      u("L", 1, "litre", "litres", "liter", "liters"),
      u("m3", 1000, "m³"),
      u("cu ft", 28.316846592, "ft³", "cubic feet")),
  @JsonProperty("temperature")
  TEMPERATURE(
      "C",
      "-5 C or 23 F",
      u("C", 1, "°c", "celsius", "deg c"),
      u("F", 1, "°f", "fahrenheit", "deg f")),
  @JsonProperty("time")
  TIME(
      "d",
      "7 days, 6 weeks or 2 years",
      u("d", 1, "day", "days"),
      u("wk", 7, "wks", "week", "weeks", "w"),
      u("h", 1 / 24.0, "hour", "hours", "hr", "hrs"),
      u("month", 30.4375, "months", "mo"),
      u("year", 365.25, "years", "yr", "yrs", "y")),
  @JsonProperty("energy")
  ENERGY("J", "1 J or 0.5 joules", u("J", 1, "joule", "joules")),
  @JsonProperty("voltage")
  VOLTAGE(
      "V", "4000 V or 4 kV", u("V", 1, "volt", "volts"), u("kV", 1000, "kilovolt", "kilovolts")),
  @JsonProperty("flow")
  FLOW(
      "L/min",
      "0.7 L/min or 3 cups/min",
      u("L/min", 1, "l/minute", "litres/min", "litres a minute", "liters a minute", "lpm"),
      u("gal/min", 3.785411784, "gpm"),
      u("cup/min", 0.2365882365, "cups/min", "cups a minute")),
  @JsonProperty("concentration")
  CONCENTRATION("mg/L", "250 mg/L or 250 ppm", u("mg/L", 1, "ppm"), u("g/L", 1000)),
  @JsonProperty("share")
  SHARE("%", "16 %", u("%", 1, "percent", "per cent", "pct"));

  private final String base;
  private final String example;
  private final Map<String, Double> factors = new LinkedHashMap<>();
  private final Map<String, String> names = new LinkedHashMap<>();

  Dimension(String base, String example, Unit... units) {
    this.base = base;
    this.example = example;
    for (Unit unit : units) {
      factors.put(unit.symbol, unit.factor);
      names.put(unit.symbol.toLowerCase(Locale.ROOT), unit.symbol);
      for (String name : unit.names) {
        names.put(name, unit.symbol);
      }
    }
  }

  /** The unit in which the program holds this quantity. */
  public String base() {
    return base;
  }

  /** How one could be written, for error messages. */
  public String example() {
    return example;
  }

  /** The symbol a written unit stands for, or null if it is none of this dimension's. */
  public String symbolFor(String written) {
    return names.get(written.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " "));
  }

  /** The symbols of all units, the program's own first. */
  public Iterable<String> symbols() {
    return factors.keySet();
  }

  /** Every way to write a unit of this dimension, in small letters. */
  public Set<String> names() {
    return Collections.unmodifiableSet(names.keySet());
  }

  /** A number of {@code symbol} in the program's own unit. */
  public double toBase(double number, String symbol) {
    if (symbol.equals("F")) {
      return (number - 32) * 5 / 9;
    }
    return number * factors.get(symbol);
  }

  /** A number in the program's own unit as a number of {@code symbol}. */
  public double fromBase(double number, String symbol) {
    if (symbol.equals("F")) {
      return number * 9 / 5 + 32;
    }
    return number / factors.get(symbol);
  }

  /** The unit a US reader expects; null where it is the same or none is usual. */
  public String usSymbol() {
    return switch (this) {
      case MASS -> "lb";
      case LENGTH -> "ft";
      case AREA -> "sq ft";
      case VOLUME -> "gal";
      case CAPACITY -> "cu ft";
      case TEMPERATURE -> "F";
      default -> null;
    };
  }

  /** Whether a written quantity of this dimension is in US units. */
  public boolean isUs(String written) {
    String text = written.toLowerCase(Locale.ROOT);
    return switch (this) {
      case MASS -> text.matches(".*\\b(lbs?|pounds?)\\b.*");
      case LENGTH, AREA ->
          text.matches(".*(\\b(ft|feet|foot|in|inch|inches|ac|acres?)\\b|['\"]).*");
      case TEMPERATURE -> text.matches(".*\\df?\\s*(°?f|fahrenheit)$");
      case VOLUME -> text.matches(".*\\b(gal|gallons?)\\b.*");
      default -> false;
    };
  }

  private static Unit u(String symbol, double factor, String... names) {
    return new Unit(symbol, factor, List.of(names));
  }

  private record Unit(String symbol, double factor, List<String> names) {}
}
