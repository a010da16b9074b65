package swineherd.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import swineherd.advice.Checklist;
import swineherd.rulebook.Rulebook;
import swineherd.setup.DiaryEntry.Did;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.units.Dates;

/**
 * An entry of the diary as it is made out of the words of a command, by the path of each answer.
 */
final class NewEntry {
  private final Setup setup;
  private final Refusal refusal;
  private final Map<String, String> answers = new LinkedHashMap<>();
  private LocalDate on;
  private Did did;

  NewEntry(Setup setup, Refusal refusal) {
    this.setup = setup;
    this.refusal = refusal;
  }

  Map<String, String> answers() {
    return answers;
  }

  void on(LocalDate day) {
    on = day;
    answers.put("on", day.toString());
  }

  void did(String what) {
    String key = what.toLowerCase(Locale.ROOT);
    for (Did known : Did.values()) {
      if (known.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(key)) {
        did = known;
        answers.put("did", key);
        return;
      }
    }
    throw refusal.because(
        "\""
            + what
            + "\" is nothing that can be noted; one of: "
            + String.join(", ", Rulebook.questions().get("diary.did").choices().keySet())
            + ".");
  }

  boolean isDone() {
    return did == Did.DONE;
  }

  /** An answer, if it was given. */
  void put(String name, String said) {
    if (said != null && name.equals("pig") && did != Did.TREATED) {
      throw refusal.because(
          "--pig goes with treated: note what that pig was given, and days that a vet named with"
              + " --vet-withdrawal.");
    }
    if (said != null) {
      answers.put(name, said);
    }
  }

  /** Anything to remember with it. */
  void remark(String words) {
    if (words != null) {
      answers.merge("note", words, (a, b) -> a + "; " + b);
    }
  }

  /**
   * The group, and what was done.
   *
   * @param words the group first; it may be left out if there is only one
   * @param taped whether the girth is given apart from the words
   */
  void words(List<String> words, boolean taped) {
    String rest = group(words);
    switch (did) {
      case WEIGHED, TAPED -> {
        if (!taped) {
          answers.put("weight", needed(rest, "the weight, such as 45 lb"));
        } else if (!rest.isEmpty()) {
          throw refusal.because("Give the weight or the girth, not both.");
        }
      }
      case MOVED -> {
        List<String> pens = setup.pens().stream().map(Pen::name).toList();
        refusal.unlessOneOf("pen", needed(rest, "the pen they were moved to"), pens);
        answers.put("pen", rest);
      }
      case DIED, TREATED -> {
        if (!rest.isEmpty()) {
          throw refusal.because(
              did == Did.TREATED
                  ? "\"%s\" is not taken here: name the medicine with --active \"NAME\", its days with --withdrawal \"DAYS\"; %s."
                      .formatted(rest, groups())
                  : "\"" + rest + "\" is no group; " + groups() + ".");
        }
      }
      default -> answers.put("note", needed(rest, "words"));
    }
  }

  private String needed(String rest, String what) {
    if (rest.isBlank()) {
      throw refusal.because("Say " + what + ".");
    }
    return rest;
  }

  /** Takes the group from the front of the words. */
  private String group(List<String> words) {
    for (int n = words.size(); n > 0; n--) {
      String name = String.join(" ", words.subList(0, n));
      Optional<Group> named =
          setup.pigs().stream().filter(g -> g.name().equalsIgnoreCase(name)).findFirst();
      if (named.isPresent()) {
        about(named.get());
        return String.join(" ", words.subList(n, words.size()));
      }
    }
    if (setup.pigs().size() != 1) {
      String first = words.isEmpty() ? "" : "\"" + words.get(0) + "\" is no group; ";
      throw refusal.because((first + "say which pigs; " + groups()) + ".");
    }
    about(setup.pigs().get(0));
    return String.join(" ", words);
  }

  /** What is noted of pigs that have gone would be passed over; for these that would be grave. */
  private void about(Group group) {
    boolean grave = did == Did.TREATED || did == Did.DIED || did == Did.MOVED;
    if (grave && group.slaughterOn() != null && on.isAfter(group.slaughterOn())) {
      throw refusal.because(
          "By the file "
              + group.name()
              + " are gone since "
              + Dates.words(group.slaughterOn())
              + ". If they are still there, change slaughterOn there first.");
    }
    answers.put("pigs", group.name());
  }

  private String groups() {
    return setup.pigs().isEmpty()
        ? "there are no groups in the file"
        : "one of: " + String.join(", ", setup.pigs().stream().map(Group::name).toList());
  }

  /**
   * The item that was done, and for whom; that may be left out if it is on the list once.
   *
   * @param words its id, then the group or pen
   */
  void item(List<String> words, Checklist list) {
    if (words.isEmpty()) {
      throw refusal.because("Say which item; check --show-rank shows the id of each.");
    }
    String item = words.get(0);
    answers.put("item", item);
    boolean named = words.size() > 1;
    String about = named ? String.join(" ", words.subList(1, words.size())) : only(item, list);
    if (setup.group(about).isPresent()) {
      answers.put("pigs", about);
    } else if (setup.pen(about).isPresent()) {
      answers.put("pen", about);
    } else if (named) {
      List<String> names = new ArrayList<>(setup.pigs().stream().map(Group::name).toList());
      setup.pens().forEach(pen -> names.add(pen.name()));
      refusal.unlessOneOf("group or pen", about, names);
    }
  }

  /** Whom an item on the list is about; empty if it is not there. */
  private String only(String item, Checklist list) {
    List<String> all =
        list.items().stream()
            .filter(i -> i.id().equals(item))
            .map(i -> i.advice().about())
            .distinct()
            .toList();
    if (all.size() > 1) {
      throw refusal.because(
          item + " is on the list for " + String.join(", ", all) + "; say for which.");
    }
    return all.isEmpty() ? "" : all.get(0);
  }
}
