package swineherd.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.compare.FollowUps;
import swineherd.compare.FollowUps.FollowUp;
import swineherd.figures.Triage;
import swineherd.rulebook.Referral;
import swineherd.setup.Problem;
import swineherd.units.Dates;

/**
 * The answer to "something looks wrong": first whom to call, then what to do meanwhile, then what
 * would tell more. The items are those of the checklist that come from signs.
 */
public final class SignsReport {
  private static final Map<String, String> NOT_SAID =
      Map.of(
          "count", "how many show it",
          "since", "since when",
          "temperature", "the temperature",
          "born", "their age");

  private final Checklist checklist;
  private final List<FollowUp> followUps;
  private final Beside beside;

  /**
   * What is to be told beside the answer.
   *
   * @param notes what was read otherwise than it was typed, a sentence each
   * @param unknown words that were not understood
   * @param people whether it seems to be told of people
   * @param breeding whether it seems to be told of sows and births
   * @param noFile whether there is no setup behind it
   */
  public record Beside(
      List<String> notes, List<String> unknown, boolean people, boolean breeding, boolean noFile) {
    public static final Beside NOTHING = new Beside(List.of(), List.of(), false, false, false);
  }

  /**
   * @param checklist the whole checklist; only what comes from signs is told
   * @param followUps what to find out
   */
  public SignsReport(Checklist checklist, List<FollowUp> followUps, Beside beside) {
    this.checklist =
        new Checklist(
            checklist.file(),
            FollowUps.signItems(checklist),
            List.of(),
            List.of(),
            List.of(),
            checklist.outlooks(),
            Set.copyOf(checklist.fired()));
    this.followUps = followUps;
    this.beside = beside;
  }

  /** For a terminal of 80 columns. */
  public String text(UnaryOperator<String> bold) {
    Lines lines = new Lines();
    TextReport items = new TextReport(checklist, false, false, bold);
    Lines.wrap(first(), Lines.WIDTH).forEach(line -> lines.line(bold.apply(line)));
    notes().forEach(note -> lines.add("  ", note));
    lines.gap().add("", overview());
    int number = 1;
    for (Item item : checklist.items()) {
      lines.gap();
      items.item(lines, number++, item);
    }
    if (!followUps.isEmpty()) {
      lines
          .gap()
          .add("", "Find this out if you can, and ask again; do not wait with the call for it");
      followUps.forEach(f -> lines.add("  - ", line(f)));
    }
    return lines.gap().add("", TextReport.FOOTER).toString();
  }

  /** To be printed or kept. */
  public String markdown() {
    StringBuilder out = new StringBuilder("**" + first() + "**\n\n");
    notes().forEach(note -> out.append("- ").append(MarkdownReport.escape(note)).append('\n'));
    if (!notes().isEmpty()) {
      out.append('\n');
    }
    out.append(new MarkdownReport(checklist, List.of(), false, false).render());
    if (!followUps.isEmpty()) {
      out.append("\n## Find this out if you can\n\n");
      followUps.forEach(f -> out.append("- ").append(MarkdownReport.escape(line(f))).append('\n'));
    }
    return out.toString();
  }

  /**
   * As the checklist in JSON, with {@code referral}, {@code notSaid} (what it stands on that was
   * not said), {@code notes} and {@code followUps} added.
   */
  public String json() {
    ObjectNode root = new JsonReport(checklist, List.of()).tree();
    root.put("referral", JsonReport.key(FollowUps.referral(checklist)));
    notSaid().forEach(root.putArray("notSaid")::add);
    notes().forEach(root.putArray("notes")::add);
    ArrayNode asked = root.putArray("followUps");
    for (FollowUp followUp : followUps) {
      ObjectNode node = asked.addObject().put("question", followUp.question());
      ObjectNode answers = node.putObject("answers");
      followUp.answers().forEach((answer, then) -> answers.put(answer, JsonReport.key(then)));
    }
    return root.toPrettyString() + "\n";
  }

  /** The keys of all signs that are known, in lines. */
  public static String known() {
    String keys = Triage.all().stream().map(Triage::key).collect(Collectors.joining(", "));
    return new Lines().add("Signs: ", "       ", keys + ".").toString();
  }

  /** What to say to those who ask for people, or for sows; empty for others. */
  public static String notForPigs(boolean people, boolean breeding) {
    return (people ? "For a person: a doctor, now if it is bad; say that you keep pigs.\n" : "")
        + (breeding ? "Of sows and births this knows little: ask your vet today.\n" : "");
  }

  /** What to do now, and what it stands on that was not said. */
  private String first() {
    Referral referral = FollowUps.referral(checklist);
    String call =
        referral == Referral.NONE
            ? "No call yet: watch them, and look again within 12 hours."
            : referral.words();
    if (beside.people()) {
      call =
          "A person: ring a doctor, and say that you keep pigs. A pig: "
              + call.toLowerCase(Locale.ROOT);
    }
    Set<String> notSaid = notSaid();
    return notSaid.isEmpty()
        ? call
        : call
            + " So soon because you did not say "
            + notSaid.stream().map(NOT_SAID::get).collect(Collectors.joining(" and "))
            + ".";
  }

  /** What was not said and makes the call as urgent as it is. */
  private Set<String> notSaid() {
    Referral referral = FollowUps.referral(checklist);
    return followUps.stream()
        .filter(f -> f.mayLower(referral))
        .flatMap(f -> f.about().stream())
        .filter(NOT_SAID::containsKey)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notForPigs(false, beside.breeding()).lines().forEach(notes::add);
    for (Problem problem : checklist.file().unusual()) {
      if (problem.path().startsWith("signs[")) {
        notes.add(
            "Read the thermometer again, but do not wait with the call: "
                + problem.message()
                + " "
                + Wording.capital(problem.accepted())
                + ".");
      }
    }
    notes.addAll(beside.notes());
    if (!beside.unknown().isEmpty()) {
      boolean soon = FollowUps.referral(checklist).compareTo(Referral.VET_TODAY) >= 0;
      notes.add(
          "Not understood: "
              + String.join(", ", beside.unknown())
              + (soon
                  ? ". Tell the vet of it too."
                  : ". If that is what worries you, call today."));
    }
    return notes;
  }

  private String overview() {
    return beside.noFile()
        ? "Without a file: place, feed, water and your other pigs are not known. Checked "
            + Dates.words(checklist.file().setup().checkOn())
            + "."
        : Overview.setup(checklist.file().setup());
  }

  /** The question and the answers that would change whom to call. */
  private String line(FollowUp followUp) {
    Referral now = FollowUps.referral(checklist);
    if (followUp.about().contains("sign")) {
      Map.Entry<String, Referral> seen = followUp.answers().entrySet().iterator().next();
      String then =
          seen.getValue() == now
              ? "there is more to do"
              : seen.getValue() == Referral.AUTHORITY_NOW
                  ? then(seen.getValue())
                  : "at least " + then(seen.getValue());
      return followUp.question() + " Then " + then + " (say " + seen.getKey() + ").";
    }
    return followUp.question()
        + " "
        + Wording.capital(
            followUp.answers().entrySet().stream()
                .filter(a -> a.getValue() != now)
                .map(a -> a.getKey() + ": " + then(a.getValue()))
                .collect(Collectors.joining("; ")))
        + ".";
  }

  private static String then(Referral referral) {
    return switch (referral) {
      case NONE -> "watch";
      case ASK_VET -> "ask the vet";
      case VET_THIS_WEEK -> "the vet this week";
      case VET_TODAY -> "the vet today";
      case VET_NOW -> "the vet now";
      case AUTHORITY_NOW -> "the authority now";
    };
  }
}
