package swineherd.compare;

import java.time.LocalDate;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.units.Display;
import swineherd.units.UnitSystem;

/** Sizes, counts and days as numbers, so that the least that does can be found by halving. */
abstract sealed class Scale {
  /** A value as a number: kg, m2, days since 1970, a count. */
  abstract double number(Object value);

  /** The number as it is answered. */
  abstract Object value(double number);

  /** Whether there is anything worth trying between these two. */
  abstract boolean goOn(double bad, double good);

  abstract double middle(double bad, double good);

  /**
   * What a keeper would build: {@code good} rounded up or down, but never past {@code far}.
   *
   * @param up whether more is safer
   */
  abstract double round(double good, boolean up, double far);

  static Scale of(Changeable.Option option, UnitSystem units) {
    Question.Kind kind = Rulebook.questions().get(option.question().question()).kind();
    return switch (kind) {
      case DATE -> new Days();
      case COUNT -> new Counts();
      default -> new Amounts(kind, units);
    };
  }

  /** Of what comes in ones: there is nothing to round. */
  private abstract static sealed class Whole extends Scale {
    @Override
    boolean goOn(double bad, double good) {
      return Math.abs(bad - good) > 1;
    }

    @Override
    double middle(double bad, double good) {
      return Math.floor((bad + good) / 2);
    }

    @Override
    double round(double good, boolean up, double far) {
      return good;
    }
  }

  private static final class Days extends Whole {
    @Override
    double number(Object value) {
      return LocalDate.parse((String) value).toEpochDay();
    }

    @Override
    Object value(double number) {
      return LocalDate.ofEpochDay((long) number).toString();
    }
  }

  private static final class Counts extends Whole {
    @Override
    double number(Object value) {
      return ((Number) value).intValue();
    }

    @Override
    Object value(double number) {
      return (int) number;
    }
  }

  private static final class Amounts extends Scale {
    private static final double CLOSE = 0.005;

    private final Question.Kind kind;
    private final UnitSystem units;

    Amounts(Question.Kind kind, UnitSystem units) {
      this.kind = kind;
      this.units = units;
    }

    @Override
    double number(Object value) {
      return ((Number) value).doubleValue();
    }

    @Override
    Object value(double number) {
      return number;
    }

    @Override
    boolean goOn(double bad, double good) {
      return Math.abs(bad - good) > CLOSE * Math.max(Math.abs(bad), Math.abs(good));
    }

    @Override
    double middle(double bad, double good) {
      return (bad + good) / 2;
    }

    @Override
    double round(double good, boolean up, double far) {
      double rounded = Display.round(good, kind.dimension(), units, up);
      return (up ? rounded > far : rounded < far) ? far : rounded;
    }
  }
}
