package swineherd.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import swineherd.advice.Unanswered;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.rulebook.Table;
import swineherd.setup.Country;
import swineherd.setup.SetupFile;

/** What a keeper might answer, spread over what is usual. */
final class PlausibleAnswers {
  private static final int MOST = 8;
  private static final int[] DAYS_FROM_NOW = {-60, -14, 14, 60, 180};

  private PlausibleAnswers() {}

  /** Values in SI units, as {@link SetupFile#with} takes them; none for a question about a name. */
  static List<Object> to(Unanswered unanswered, SetupFile file) {
    Question question = Rulebook.questions().get(unanswered.question());
    if (unanswered.question().equals("pigs.crossedWith")) {
      return List.of(); // left out, they are of one breed
    }
    return switch (question.kind()) {
      case YES_NO -> List.of(true, false);
      case CHOICE -> {
        List<Object> keys = spread(new ArrayList<>(question.choices().keySet()));
        yield question.list() ? keys.stream().<Object>map(List::of).toList() : keys;
      }
      case DATE -> days(file.setup().checkOn());
      case DAY_OF_YEAR -> List.of("--04-20", "--06-10", "--10-01", "--11-05", "--12-10");
      case LATITUDE -> latitudes(file.setup().place().country());
      case TEXT -> List.of();
      case COUNT -> ends(question).stream().<Object>map(d -> (int) Math.round(d)).toList();
      default -> {
        List<Object> values = new ArrayList<>(ends(question));
        yield question.list() ? List.of() : values;
      }
    };
  }

  /** Those of the country, as far as it is known how far south it reaches. */
  private static List<Object> latitudes(Country country) {
    if (country == Country.AUSTRALIA || country == Country.NEW_ZEALAND) {
      return List.of(-45.0, -35.0);
    }
    if (country == null || country == Country.ELSEWHERE) {
      return List.of(55.0, 45.0, 35.0, -35.0);
    }
    Table south = Table.named("dark-months");
    double southernmost =
        south.has(country.key()) ? south.row(country.key()).number("southernmost") : 35;
    return Stream.of(65.0, 55.0, 45.0, 35.0, southernmost)
        .filter(latitude -> latitude >= southernmost)
        .distinct()
        .<Object>map(latitude -> latitude)
        .toList();
  }

  private static List<Object> days(LocalDate from) {
    List<Object> days = new ArrayList<>();
    for (int ahead : DAYS_FROM_NOW) {
      days.add(from.plusDays(ahead).toString());
    }
    return days;
  }

  private static List<Object> spread(List<Object> all) {
    if (all.size() <= MOST) {
      return all;
    }
    List<Object> some = new ArrayList<>();
    for (int i = 0; i < MOST; i++) {
      some.add(all.get(i * (all.size() - 1) / (MOST - 1)));
    }
    return some;
  }

  /** Both ends of what is usual, or else possible, and the middle between them. */
  private static List<Double> ends(Question question) {
    List<Double> limits = question.usual() == null ? question.range() : question.usual();
    if (limits == null) {
      return List.of();
    }
    return List.of(limits.get(0), (limits.get(0) + limits.get(1)) / 2, limits.get(1));
  }
}
