package swineherd.ask;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import swineherd.figures.Hemisphere;
import swineherd.outlook.Climate;
import swineherd.rulebook.Question;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Place;
import swineherd.setup.Problem;
import swineherd.setup.Setup;
import swineherd.units.UnitSystem;
import swineherd.units.UnreadableException;

/**
 * Asks for a setup, one question at a time, and keeps every answer in the file at once.
 *
 * <pre>{@code
 * int code = new Conversation(talk, Path.of("pigs.yaml"), LocalDate.now()).run();
 * }</pre>
 */
public final class Conversation {
  /** All that was said was understood, or nothing more was to be said. */
  public static final int DONE = 0;

  /** The file cannot be written. */
  public static final int CANNOT_WRITE = 1;

  /** The lines ended, and some of them were not understood. */
  public static final int NOT_UNDERSTOOD = 2;

  /** The person broke off, as programs that end by Ctrl-C say it. */
  public static final int BROKEN_OFF = 130;

  private static final int MOST_AT_ONCE = 8;
  private static final String PROMPT = "> ";
  private static final Set<String> STOP = Set.of("stop", "quit", "exit", "later", "q", "bye");
  private static final Set<String> BACK = Set.of("back", "b", "go back");
  private static final Set<String> SKIP = Set.of("", "skip", "s", "pass", "next");
  private static final Set<String> HELP = Set.of("?", "help", "h");
  private static final Set<String> MORE = Set.of("more", "go on");

  private final Talk talk;
  private final Draft draft;
  private final Outcome outcome;
  private final Deque<Asked> past = new ArrayDeque<>();
  private final Round first;
  private Round round;
  private Asked wanted;
  private String pushed;
  private String heading = "";
  private boolean ended;
  private boolean groupsAsked;
  private int refused;

  /**
   * @param talk the other end
   * @param path the file; it need not exist yet
   * @param today the day of the check where the file names none
   * @throws IOException if the file cannot be read
   * @throws swineherd.setup.BadSetupException if something in it is wrong
   */
  public Conversation(Talk talk, Path path, LocalDate today) throws IOException {
    this.talk = talk;
    this.draft = Draft.open(path, today);
    this.outcome = new Outcome(draft);
    this.first = Round.first(draft);
    this.round = first;
  }

  /** Asks until the person has enough; the exit code of the program. */
  public int run() {
    try {
      greet();
      while (!ended) {
        Asked next = wanted != null ? wanted : round.next();
        wanted = null;
        if (next != null) {
          ask(next);
        } else if (round != first) {
          round = first; // a topic is over: on with what is left of the first round
        } else if (!groupsAsked) {
          askForGroups();
        } else {
          offerMore();
        }
      }
      goodbye();
      return refused > 0 && !talk.isPerson() ? NOT_UNDERSTOOD : DONE;
    } catch (Talk.Interrupted e) {
      goodbye();
      return BROKEN_OFF;
    } catch (IOException e) {
      talk.say("");
      talk.say(Phrases.wrapped(draft.path() + " cannot be gone on with: " + e.getMessage() + "."));
      talk.say("The answers before this one are in it; this one is not.");
      return CANNOT_WRITE;
    }
  }

  private void greet() {
    boolean goesOn = draft.exists();
    talk.say(
        Phrases.wrapped(
            goesOn
                ? "Going on with " + draft.path() + "; what is in it stays."
                : "A few questions, about twenty-five. Each answer is kept in "
                    + draft.path()
                    + " at once."));
    talk.say(
        Phrases.wrapped(
            "Answer as you would say it: 12 by 30 ft, half an acre, about 35 pounds, April 10."
                + " Enter leaves a question; don't know, back, stop and ? are always understood."));
    groupsAsked = first.next() == null || draft.file().setup().pigs().size() > 1;
  }

  private void goodbye() {
    talk.say("");
    if (!draft.exists()) {
      talk.say("Nothing was answered, so nothing was written.");
      return;
    }
    String file = String.valueOf(draft.path());
    if (refused > 0 && !talk.isPerson()) {
      talk.say(
          Phrases.wrapped(
              "Not understood, and so not kept: "
                  + (refused == 1 ? "one line." : refused + " lines.")));
    }
    talk.say("All is kept in " + file + ".");
    talk.say(Phrases.wrapped("  go on:     ", "./swineherd ask " + file));
    talk.say(Phrases.wrapped("  the list:  ", "./swineherd check " + file));
  }

  // ------------------------------------------------------------------------------- one question

  private void ask(Asked asked) throws IOException {
    show(asked);
    while (true) {
      String typed = next(PROMPT, words(asked));
      if (typed == null) {
        ended = true;
        return;
      }
      String plain = typed.toLowerCase(Locale.ROOT);
      if (SKIP.contains(plain)) {
        skip(asked);
        return;
      }
      if (HELP.contains(plain)) {
        talk.say(Phrases.help(asked.question(), units(), Asked.topics()));
        continue;
      }
      if (Hearing.isUnknown(typed)) {
        if (keep(asked, List.of("unknown"))) {
          talk.say("  = not known");
          return;
        }
        continue;
      }
      if (command(plain, asked)) {
        return;
      }
      if (answer(asked, typed)) {
        return;
      }
    }
  }

  private void skip(Asked asked) {
    round.pass(asked);
    remember(asked);
  }

  private void remember(Asked asked) {
    past.remove(asked);
    past.push(asked);
  }

  private void show(Asked asked) {
    Setup setup = draft.file().setup();
    String about = asked.about(setup);
    String now = asked.section() + asked.index();
    talk.say("");
    if (!now.equals(heading)) {
      talk.say(Phrases.heading(asked, about, round.size()));
      heading = now;
    }
    talk.say(Phrases.question(asked.question(), units(), names(asked), draft.said(asked.path())));
  }

  /** Takes what was typed as the answer; false if it is to be asked again. */
  private boolean answer(Asked asked, String typed) throws IOException {
    Heard heard;
    try {
      heard = hear(asked, typed);
    } catch (UnreadableException e) {
      refuse(e.getMessage(), e.accepted());
      return false;
    }
    if (heard == null || (heard.doubt() && !confirmed("Is that " + heard.words() + "?"))) {
      return false;
    }
    if (!keep(asked, heard.written())) {
      return false;
    }
    if (!heard.doubt()) {
      talk.say(Phrases.wrapped("  = ", heard.words()));
    }
    return true;
  }

  /** What was heard; null if the person takes it back. */
  private Heard hear(Asked asked, String typed) throws IOException {
    List<String> names = names(asked);
    if (names.isEmpty()) {
      return hearing().hear(asked.question(), typed);
    }
    String name = named(names, typed.strip());
    if (name != null) {
      return Heard.sure(name, name);
    }
    if (!asked.question().path().equals("pigs[].pen")) {
      throw new UnreadableException(
          Hearing.quoted(typed) + " is none of them", "one of: " + String.join(", ", names));
    }
    Heard fresh = hearing().hear(asked.question(), typed);
    if (!confirmed("There is no pen " + fresh.words() + " yet. Is it another pen?")) {
      return null;
    }
    String path = "pens[" + draft.file().setup().pens().size() + "].name";
    return keep(Asked.at(path), fresh.written()) ? fresh : null;
  }

  private static String named(List<String> names, String typed) {
    if (typed.matches("\\d{1,2}")) {
      int number = Integer.parseInt(typed);
      if (number >= 1 && number <= names.size()) {
        return names.get(number - 1);
      }
    }
    return names.stream().filter(typed::equalsIgnoreCase).findFirst().orElse(null);
  }

  private boolean confirmed(String question) {
    String typed = next("  " + question + " (y or n) ", List.of("yes", "no"));
    if (typed == null) {
      ended = true;
      return false;
    }
    if (Hearing.isYes(typed)) {
      return true;
    }
    if (!Hearing.isNo(typed) && !typed.isEmpty()) {
      pushed = typed; // said anew at once, or something else is wanted
    } else {
      talk.say("  Then say it again, with its unit or in full.");
    }
    return false;
  }

  /** Writes the answer if it goes with the others; tells what is in the way otherwise. */
  private boolean keep(Asked asked, List<String> written) throws IOException {
    Draft.Trial trial = draft.trial(asked.path(), written);
    if (trial.text() == null) {
      Problem own = trial.own(asked.path());
      if (own != null) {
        refuse(own.message(), own.accepted());
        return false;
      }
      if (!makesWay(trial)) {
        return false;
      }
      return keep(asked, written);
    }
    Problem unusual = trial.unusual(asked.path());
    if (unusual != null
        && !confirmed("That is unusual: " + unusual.accepted() + ". Is it right?")) {
      return false;
    }
    draft.keep(trial);
    remember(asked);
    round.pass(asked);
    return true;
  }

  /** Other answers that do not go with a new one may be taken out, to be asked again. */
  private boolean makesWay(Draft.Trial trial) throws IOException {
    List<String> others = trial.others();
    List<String> told = new ArrayList<>();
    for (String path : others) {
      Asked other = Asked.at(path);
      String said = draft.said(path);
      if (other.question() == null || said == null) {
        refuse(trial.problems().get(0).message(), trial.problems().get(0).accepted());
        return false;
      }
      told.add(other.question().label() + " (" + said + ")");
    }
    String question = "That does not go with " + String.join(", ", told) + ". Take that out?";
    if (!confirmed(question)) {
      return false;
    }
    draft.takeAway(others);
    others.forEach(path -> round.recall(Asked.at(path)));
    return true;
  }

  private void refuse(String message, String accepted) {
    refused++;
    talk.say(Phrases.wrapped("  ", message + (accepted == null ? "." : "; " + accepted + ".")));
  }

  // ------------------------------------------------------------------------------- commands

  /** Carries out a command; false if it is none, and so an answer. */
  private boolean command(String plain, Asked asked) throws IOException {
    if (STOP.contains(plain)) {
      ended = true;
      return true;
    }
    if (BACK.contains(plain)) {
      back(asked);
      return true;
    }
    if (MORE.contains(plain)) {
      more();
      return true;
    }
    if (another(plain)) {
      return true;
    }
    String topic = plain.replaceFirst("^go (?:to )?(?:the )?", "");
    boolean free = asked == null || asked.question().kind() != Question.Kind.TEXT;
    if (!Asked.topics().contains(topic) || !(free || plain.startsWith("go "))) {
      return false;
    }
    if (asked != null && !plain.startsWith("go ") && isAnswer(asked, topic)) {
      return false;
    }
    go(topic);
    return true;
  }

  private boolean isAnswer(Asked asked, String word) {
    try {
      return !hearing().hear(asked.question(), word).doubt();
    } catch (UnreadableException e) {
      return false;
    }
  }

  private void back(Asked asked) {
    Asked before = past.poll();
    if (before != null && before.equals(asked)) {
      before = past.poll();
    }
    if (before == null) {
      talk.say("  This is the first question.");
      wanted = asked;
      return;
    }
    round.recall(before);
    wanted = before;
  }

  private void go(String topic) {
    if (topic.equals("signs")) {
      int signs = draft.file().setup().signs().size();
      if (signs == 0) {
        wanted = Asked.at("signs[0].sign");
      }
    }
    round = Round.topic(draft, topic);
    heading = "";
  }

  private boolean another(String plain) {
    Setup setup = draft.file().setup();
    switch (plain) {
      case "another pen" -> wanted = Asked.at("pens[" + setup.pens().size() + "].name");
      case "another group" -> wanted = Asked.at("pigs[" + setup.pigs().size() + "].name");
      case "another sign" -> wanted = Asked.at("signs[" + setup.signs().size() + "].sign");
      default -> {
        return false;
      }
    }
    round = first;
    return true;
  }

  private void more() {
    talk.say("  Trying out what each open answer would change ...");
    List<String> paths = outcome.telling(MOST_AT_ONCE);
    if (paths.isEmpty()) {
      talk.say("  No open question would move the list. Topics are still open to you.");
    }
    round = Round.of(draft, paths);
    heading = "";
  }

  private void askForGroups() throws IOException {
    groupsAsked = true;
    Setup setup = draft.file().setup();
    if (setup.pigs().isEmpty()) {
      return;
    }
    talk.say("");
    String typed =
        next(
            "Are there other pigs, kept or bought apart? Their name, or Enter for no: ", List.of());
    if (typed == null) {
      ended = true;
    } else if (!typed.isEmpty() && !Hearing.isNo(typed) && !Hearing.isUnknown(typed)) {
      if (Hearing.isYes(typed)) {
        another("another group");
      } else if (!command(typed.toLowerCase(Locale.ROOT), null)) {
        Asked name = Asked.at("pigs[" + setup.pigs().size() + "].name");
        wanted = answer(name, typed) ? null : name;
        round = first;
      }
    }
  }

  /** The first questions are answered: the list so far, and what may come next. */
  private void offerMore() throws IOException {
    talk.say("");
    outcome.lines().forEach(talk::say);
    talk.say("");
    talk.say(Phrases.wrapped("  more    ", "what would move the list most"));
    talk.say(Phrases.wrapped("  topics  ", String.join(", ", Asked.sections())));
    talk.say(Phrases.wrapped("  also    ", "another pen, another group, back"));
    while (wanted == null && !ended) {
      String typed = next("What next? Enter if it is enough: ", completions());
      if (typed == null || typed.isEmpty() || Hearing.isNo(typed) || Hearing.isUnknown(typed)) {
        ended = true;
        return;
      }
      Round before = round;
      String plain = typed.toLowerCase(Locale.ROOT);
      if (command(plain, null)) {
        if (wanted != null || (round != before && round.next() != null)) {
          return;
        }
        round = before;
      } else if (!HELP.contains(plain)) {
        refuse(Hearing.quoted(typed) + " is none of these", "more, a topic, or Enter");
      }
    }
  }

  // ------------------------------------------------------------------------------- what is known

  private String next(String prompt, List<String> words) {
    String line = pushed != null ? pushed : talk.hear(prompt, words);
    pushed = null;
    // what was pasted must neither steer the terminal nor get into the file
    return line == null ? null : line.replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
  }

  private UnitSystem units() {
    return draft.file().setup().units();
  }

  private Hearing hearing() {
    Setup setup = draft.file().setup();
    return new Hearing(setup.units(), setup.checkOn(), south(setup.place()));
  }

  /** Whether the place lies south of the equator; null if that is not known. */
  private static Boolean south(Place place) {
    return new Climate(place)
        .hemisphereSaid()
        .map(hemisphere -> hemisphere == Hemisphere.SOUTH)
        .orElse(null);
  }

  /** The names among which a question lets choose; empty if it is not about a name. */
  private List<String> names(Asked asked) {
    Setup setup = draft.file().setup();
    return switch (asked.question().path()) {
      case "pigs[].pen" -> setup.pens().stream().map(Pen::name).toList();
      case "signs[].pigs" -> setup.pigs().stream().map(Group::name).toList();
      default -> List.of();
    };
  }

  private List<String> words(Asked asked) {
    Supplier<List<String>> answers =
        () ->
            switch (asked.question().kind()) {
              case CHOICE -> List.copyOf(asked.question().choices().keySet());
              case YES_NO -> List.of("yes", "no");
              default -> names(asked);
            };
    List<String> words = new ArrayList<>(answers.get());
    words.addAll(List.of("don't know", "skip", "back", "stop"));
    return words;
  }

  private static List<String> completions() {
    List<String> words = new ArrayList<>(Asked.topics());
    words.addAll(List.of("more", "another pen", "another group", "stop"));
    return words;
  }
}
