package swineherd.setup;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import swineherd.rulebook.Card;
import swineherd.rulebook.Rulebook;
import swineherd.units.Dates;

/** What must hold between answers: names that exist, days in their order, numbers that agree. */
final class SetupChecks {
  private final Setup setup;
  private final Map<String, Answer> answers;
  private final List<Problem> problems;

  private SetupChecks(Setup setup, Map<String, Answer> answers, List<Problem> problems) {
    this.setup = setup;
    this.answers = answers;
    this.problems = problems;
  }

  static void check(Setup setup, Map<String, Answer> answers, List<Problem> problems) {
    SetupChecks checks = new SetupChecks(setup, answers, problems);
    checks.names("pens", setup.pens().stream().map(Pen::name).toList());
    checks.names("pigs", setup.pigs().stream().map(Group::name).toList());
    for (int i = 0; i < setup.pens().size(); i++) {
      checks.fence("pens[" + i + "].fence.", setup.pens().get(i).fence());
    }
    for (int i = 0; i < setup.pigs().size(); i++) {
      checks.group("pigs[" + i + "].", setup.pigs().get(i));
    }
    for (int i = 0; i < setup.signs().size(); i++) {
      Sign sign = setup.signs().get(i);
      String path = "signs[" + i + "].";
      checks.groupExists(path + "pigs", sign.pigs());
      checks.notLater(path + "since", sign.since(), setup.checkOn(), "the day of the check");
      Integer count = checks.groupOf(sign).map(Group::count).orElse(null);
      if (count != null && sign.count() != null && sign.count() > count) {
        checks.add(path + "count", "more pigs than the group has", "at most " + count);
      }
    }
    for (int i = 0; i < setup.diary().size(); i++) {
      DiaryEntry entry = setup.diary().get(i);
      String path = "diary[" + i + "].";
      checks.groupExists(path + "pigs", entry.pigs());
      checks.penExists(path + "pen", entry.pen());
      checks.notLater(path + "on", entry.on(), setup.checkOn(), "the day of the check");
      checks.itemExists(path + "item", entry.item());
      checks.notBeforeArrival(path + "on", entry);
      checks.nameOnly(path + "active", entry.active());
    }
    checks.deaths();
    String zone = setup.place().hardinessZone();
    if (zone != null && !zone.matches("(?i)(zone\\s*)?([1-9]|1[0-3])\\s*[ab]?")) {
      checks.add("place.hardinessZone", "\"" + zone + "\" is not a zone", "1a to 13b");
    }
  }

  /** Never an amount: it would be repeated wherever the medicine is named. */
  private void nameOnly(String path, String active) {
    if (active != null && Amounts.isIn(active)) {
      add(
          path,
          "the name alone, without amount or strength",
          "such as ivermectin; an amount belongs in your medicine book and is not repeated here");
    }
  }

  /**
   * What is done to pigs is done once they are there; what is done for them may be before, and so
   * may a treatment: by whoever sold them.
   */
  private void notBeforeArrival(String path, DiaryEntry entry) {
    Group group = Since.group(setup, entry);
    if (entry.did() == null || entry.on() == null || group == null || group.arrives() == null) {
      return;
    }
    switch (entry.did()) {
      case WEIGHED, TAPED, DIED, MOVED -> {
        if (entry.on().isBefore(group.arrives())) {
          add(
              path,
              Dates.words(entry.on())
                  + " is before "
                  + group.name()
                  + " arrive, "
                  + Dates.words(group.arrives()),
              null);
        }
      }
      case TREATED -> {
        if (group.born() != null && entry.on().isBefore(group.born())) {
          String born = Dates.words(group.born());
          add(path, Dates.words(entry.on()) + " is before they were born, " + born, null);
        }
      }
      default -> {
        // feed may be bought, and a vet or an item may come, before the pigs
      }
    }
  }

  /** The group a sign is about; the only one, where it was not named. */
  private Optional<Group> groupOf(Sign sign) {
    return sign.pigs() == null && setup.pigs().size() == 1
        ? Optional.of(setup.pigs().get(0))
        : setup.group(sign.pigs());
  }

  private void names(String list, List<String> names) {
    Map<String, Integer> seen = new HashMap<>();
    for (int i = 0; i < names.size(); i++) {
      Integer before = seen.putIfAbsent(names.get(i), i);
      if (before != null) {
        add(
            list + "[" + i + "].name",
            "\"" + names.get(i) + "\" is also the name of " + list + "[" + before + "]",
            "give each its own name");
      }
    }
  }

  private void fence(String path, Fence fence) {
    if (fence.wireHeights() != null
        && fence.strands() != null
        && fence.wireHeights().size() != fence.strands()) {
      add(
          path + "wireHeights",
          fence.wireHeights().size() + " heights for " + fence.strands() + " strands",
          "one height for each live strand");
    }
    if (fence.openVoltage() != null
        && fence.loadVoltage() != null
        && fence.loadVoltage() >= fence.openVoltage()) {
      add(path + "loadVoltage", "is not less than the voltage without load", null);
    }
  }

  private void group(String path, Group group) {
    penExists(path + "pen", group.pen());
    notLater(path + "born", group.born(), group.arrives(), "the arrival");
    notLater(path + "born", group.born(), group.castratedOn(), "the castration");
    notLater(path + "arrives", group.arrives(), group.slaughterOn(), "the slaughter");
    notLater(path + "countedOn", group.countedOn(), setup.checkOn(), "the day of the check");
    notLater(path + "wormedOn", group.wormedOn(), setup.checkOn(), "the day of the check");
    if (group.arrivalWeight() != null
        && group.targetWeight() != null
        && group.arrivalWeight() > group.targetWeight()) {
      add(path + "targetWeight", "is less than the weight on arrival", null);
    }
    if (group.born() != null && group.arrives() != null && group.ageOnArrival() != null) {
      long age = ChronoUnit.DAYS.between(group.born(), group.arrives());
      if (Math.abs(age - group.ageOnArrival()) > 10) {
        add(
            path + "ageOnArrival",
            "does not agree with born and arrives, which make " + age + " days",
            "leave one of the three out");
      }
    }
  }

  private void penExists(String path, String pen) {
    if (pen != null && setup.pen(pen).isEmpty()) {
      add(path, "no pen is called \"" + pen + "\"", known("pens", penNames()));
    }
  }

  private void groupExists(String path, String group) {
    if (group != null && setup.group(group).isEmpty()) {
      add(path, "no group is called \"" + group + "\"", known("groups", groupNames()));
    }
  }

  /** An item of a topic that is not ours may come from rules of the keeper's own. */
  private void itemExists(String path, String item) {
    if (item == null || Rulebook.cards().containsKey(item)) {
      return;
    }
    for (Card card : Rulebook.cards().values()) {
      if (card.formerly().contains(item)) {
        return;
      }
    }
    String near = AnswerReader.nearest(item, Rulebook.cards().keySet());
    String topic = item.contains(".") ? item.substring(0, item.indexOf('.')) : item;
    boolean ours = Rulebook.cards().values().stream().anyMatch(c -> c.topic().equals(topic));
    if (near != null || ours || !item.contains(".")) {
      String accepted =
          near == null
              ? "the id of an item, such as fence.train-first"
              : "did you mean " + near + "?";
      add(path, "no item is called \"" + item + "\"", accepted);
    }
  }

  private void deaths() {
    Map<String, Integer> died = new HashMap<>();
    for (int i = 0; i < setup.diary().size(); i++) {
      DiaryEntry entry = setup.diary().get(i);
      Group group = Since.group(setup, entry);
      if (entry.did() == DiaryEntry.Did.DIED && group != null && group.count() != null) {
        int all = died.merge(group.name(), entry.countOrOne(), Integer::sum);
        if (all > group.count()) {
          add(
              "diary[" + i + "].count",
              all + " of " + group.name() + " would have died in all",
              "at most " + group.count() + ", which is how many there were");
        }
      }
    }
  }

  private Set<String> penNames() {
    return setup.pens().stream().map(Pen::name).collect(Collectors.toSet());
  }

  private Set<String> groupNames() {
    return setup.pigs().stream().map(Group::name).collect(Collectors.toSet());
  }

  private static String known(String what, Set<String> names) {
    return names.isEmpty()
        ? "there are no " + what + " in the file"
        : "one of: " + names.stream().sorted().collect(Collectors.joining(", "));
  }

  private void notLater(String path, LocalDate first, LocalDate second, String secondWords) {
    if (first != null && second != null && first.isAfter(second)) {
      add(path, Dates.words(first) + " is after " + secondWords + ", " + Dates.words(second), null);
    }
  }

  private void add(String path, String message, String accepted) {
    Answer answer = answers.get(path);
    problems.add(
        new Problem(
            path,
            answer == null ? 0 : answer.line(),
            answer == null ? 0 : answer.column(),
            message,
            accepted));
  }
}
