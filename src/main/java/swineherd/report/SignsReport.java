package swineherd.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.compare.FollowUps;
import swineherd.compare.FollowUps.FollowUp;
import swineherd.figures.Triage;
import swineherd.rulebook.Referral;

/**
 * The answer to "something looks wrong": first whom to call, then what to do meanwhile, then what
 * would tell more. The items are those of the checklist that come from signs.
 */
public final class SignsReport {
  private final Checklist checklist;
  private final List<FollowUp> followUps;

  /**
   * @param checklist the whole checklist; only what comes from signs is told
   * @param followUps what to find out
   */
  public SignsReport(Checklist checklist, List<FollowUp> followUps) {
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
  }

  /** For a terminal of 80 columns. */
  public String text(UnaryOperator<String> bold) {
    Lines lines = new Lines();
    TextReport items = new TextReport(checklist, false, false, bold);
    lines.line(bold.apply(first()));
    lines.gap().add("", Overview.setup(checklist.file().setup()));
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
    out.append(new MarkdownReport(checklist, List.of(), false, false).render());
    if (!followUps.isEmpty()) {
      out.append("\n## Find this out if you can\n\n");
      followUps.forEach(f -> out.append("- ").append(MarkdownReport.escape(line(f))).append('\n'));
    }
    return out.toString();
  }

  /** As the checklist in JSON, with {@code referral} and {@code followUps} added. */
  public String json() {
    ObjectNode root = new JsonReport(checklist, List.of()).tree();
    root.put("referral", JsonReport.key(FollowUps.referral(checklist)));
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

  /** What to do now, in one sentence. */
  private String first() {
    Referral referral = FollowUps.referral(checklist);
    return referral == Referral.NONE
        ? "No call yet: watch them, and look again within 12 hours."
        : referral.words();
  }

  /** The question and the answers that would change whom to call. */
  private String line(FollowUp followUp) {
    Referral now = FollowUps.referral(checklist);
    return followUp.question()
        + " "
        + followUp.answers().entrySet().stream()
            .filter(a -> a.getValue() != now || followUp.answers().size() == 1)
            .map(a -> a.getKey() + ": " + then(a.getValue()))
            .collect(Collectors.joining("; "))
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
