package swineherd.ask;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import swineherd.report.Lines;
import swineherd.rulebook.Question;
import swineherd.units.Dimension;
import swineherd.units.Display;
import swineherd.units.UnitSystem;

/** How a question looks, for 80 columns. */
final class Phrases {
  private static final List<List<String>> COMMANDS =
      List.of(
          List.of("Enter", "leave it for another time, or keep the answer that is there"),
          List.of("don't know", "is an answer; it is kept as unknown"),
          List.of("back", "to the question before"),
          List.of("fence", "to a topic; one of: "),
          List.of("more", "the open questions that would move the list most"),
          List.of("another pen", "or another group"),
          List.of("stop", "all is kept, and the same command goes on from there"));

  private static final Map<String, String> HEADINGS =
      Map.of("keeper", "You", "pens", "Pen", "pigs", "Pigs", "signs", "Signs of illness");

  private Phrases() {}

  static String wrapped(String text) {
    return String.join("\n", Lines.wrap(text, Lines.WIDTH));
  }

  static String wrapped(String lead, String text) {
    return new Lines().add(lead, text).toString().stripTrailing();
  }

  static String heading(Asked asked, String about, int left) {
    String section = asked.section();
    String name =
        HEADINGS.getOrDefault(
            section,
            section.isEmpty()
                ? "First"
                : Character.toUpperCase(section.charAt(0)) + section.substring(1));
    String to = left > 1 ? "   (about " + left + " questions to go)" : "";
    return "-- " + name + (about.isEmpty() ? "" : ": " + about) + to;
  }

  static String question(Question question, UnitSystem units, List<String> names, String said) {
    StringBuilder text = new StringBuilder(wrapped(question.ask() + hint(question, units)));
    List<String> choices = names.isEmpty() ? numbered(question) : names(names);
    choices.forEach(line -> text.append('\n').append(line));
    if (said != null) {
      text.append('\n')
          .append(
              wrapped(
                  "  ",
                  "(so far: "
                      + (said.equals("unknown") ? "not known" : said)
                      + "; Enter keeps it)"));
    }
    return text.toString();
  }

  private static String hint(Question question, UnitSystem units) {
    Dimension dimension = question.kind().dimension();
    if (dimension != null) {
      String one = example(dimension, units);
      return " (such as " + (question.list() ? one + ", one for each)" : one + ")");
    }
    return switch (question.kind()) {
      case YES_NO -> " (y or n)";
      case DATE -> " (such as 24 April)";
      case DAY_OF_YEAR -> " (such as 20 October)";
      case LATITUDE -> " (such as 45 N)";
      case PRICE -> " (a number)";
      case PRICE_BY_WEIGHT -> " (such as 15 per 25 kg)";
      case CHOICE ->
          Choosing.isNumbered(question)
              ? question.list() ? " (one or more)" : ""
              : " (type it; ? lists all " + question.choices().size() + ")";
      default -> "";
    };
  }

  /** The examples of a dimension that are in the keeper's units. */
  private static String example(Dimension dimension, UnitSystem units) {
    List<String> own =
        Arrays.stream(dimension.example().split(", | or "))
            .filter(e -> dimension.isUs(e) == (units == UnitSystem.US))
            .toList();
    return own.isEmpty() ? dimension.example() : String.join(" or ", own);
  }

  private static List<String> numbered(Question question) {
    return question.kind() == Question.Kind.CHOICE && Choosing.isNumbered(question)
        ? names(List.copyOf(question.choices().values()))
        : List.of();
  }

  private static List<String> names(List<String> names) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      lines.add(wrapped("  %2d  ".formatted(i + 1), names.get(i)));
    }
    return lines;
  }

  static String help(Question question, UnitSystem units, Set<String> topics) {
    StringBuilder text = new StringBuilder();
    if (question.help() != null) {
      text.append(wrapped("  ", question.help())).append('\n');
    }
    if (question.usual() != null || question.range() != null) {
      text.append(wrapped("  ", limits(question, units))).append('\n');
    }
    if (question.kind() == Question.Kind.CHOICE && !Choosing.isNumbered(question)) {
      String all = String.join("; ", question.choices().values());
      text.append(wrapped("  ", "One of: " + all)).append('\n');
    }
    for (List<String> command : COMMANDS) {
      String means =
          command.get(1).endsWith(": ")
              ? command.get(1) + String.join(", ", topics)
              : command.get(1);
      text.append(wrapped("  %-13s".formatted(command.get(0)), means)).append('\n');
    }
    return text.toString().stripTrailing();
  }

  private static String limits(Question question, UnitSystem units) {
    boolean usual = question.usual() != null;
    List<Double> limits = usual ? question.usual() : question.range();
    return (usual ? "Usual: " : "Possible: ")
        + amount(question, limits.get(0), units)
        + " to "
        + amount(question, limits.get(1), units)
        + ".";
  }

  private static String amount(Question question, double value, UnitSystem units) {
    Dimension dimension = question.kind().dimension();
    return dimension == null ? Amounts.number(value) : Display.amount(value, dimension, units);
  }
}
