package swineherd.report;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.outlook.HomeKill;
import swineherd.outlook.Outlook;
import swineherd.outlook.SlaughterPlan;
import swineherd.outlook.SlaughterReadiness;
import swineherd.outlook.sheet.FigureSheet;
import swineherd.outlook.sheet.Row;
import swineherd.rulebook.Stage;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/** What of a checklist and of the figures belongs to the slaughter of each group. */
final class SlaughterView {
  private static final Set<String> TOPICS = Set.of("slaughter", "treatment", "taint");
  private static final Set<String> IN_THE_PLAN = Set.of("book-by", "feed-off");
  private static final Set<String> IN_COOK = Set.of("cook", "trichinella");

  private final Checklist checklist;
  private final FigureSheet sheet;
  private final Wording wording;

  /** A checklist, and the figures of the same setup. */
  SlaughterView(Checklist checklist, FigureSheet sheet) {
    this.checklist = checklist;
    this.sheet = sheet;
    this.wording = new Wording(sheet.setup().units());
  }

  Setup setup() {
    return sheet.setup();
  }

  FigureSheet sheet() {
    return sheet;
  }

  List<SlaughterReadiness> groups() {
    return all(SlaughterReadiness.class);
  }

  <T extends Outlook> List<T> all(Class<T> type) {
    return checklist.outlooks().stream().filter(type::isInstance).map(type::cast).toList();
  }

  <T extends Outlook> Optional<T> first(Class<T> type, Predicate<T> which) {
    return all(type).stream().filter(which).findFirst();
  }

  Group group(SlaughterReadiness ready) {
    return setup().group(ready.pigs()).orElseThrow();
  }

  SlaughterPlan plan(SlaughterReadiness ready) {
    return SlaughterPlan.of(ready, group(ready));
  }

  /** The items of that stage, and of the topics it hangs on, about these pigs. */
  List<Item> items(SlaughterReadiness ready) {
    return checklist.items().stream()
        .filter(
            item ->
                item.card().stage() == Stage.BEFORE_SLAUGHTER
                    || TOPICS.contains(item.card().topic())
                    || item.id().equals("feed.medicated"))
        .filter(
            item -> item.advice().about().equals(ready.pigs()) || item.advice().about().isEmpty())
        .toList();
  }

  /** The place of an item in the checklist, from 1. */
  int place(Item item) {
    return checklist.items().indexOf(item) + 1;
  }

  String heading(Item item) {
    return wording.fill(item.card().heading(), item.advice());
  }

  String doIt(Item item) {
    return wording.fill(item.card().doIt(), item.advice());
  }

  /** Null if the card has none. */
  String caution(Item item) {
    return wording.fill(item.card().caution(), item.advice());
  }

  /** The figures of the meat that neither the plan nor an item tells. */
  List<Row> rows(SlaughterReadiness ready) {
    boolean cook = items(ready).stream().anyMatch(item -> item.id().equals("slaughter.cook"));
    return sheet.sections().stream()
        .filter(s -> s.key().equals("slaughter") && s.about().equals(ready.pigs()))
        .flatMap(s -> s.rows().stream())
        .filter(row -> !IN_THE_PLAN.contains(row.key()))
        .filter(row -> !cook || !IN_COOK.contains(row.key()))
        .toList();
  }

  /** What the law there says and no item told; empty if no group is left. */
  List<String> law() {
    Optional<HomeKill> law = first(HomeKill.class, l -> true);
    if (law.isEmpty()) {
      return List.of();
    }
    boolean home = isListed("slaughter.home");
    boolean sale = isListed("slaughter.sale", "slaughter.home-meat");
    return SlaughterWords.law(law.get(), !home, !sale);
  }

  private boolean isListed(String... ids) {
    return checklist.items().stream().anyMatch(item -> List.of(ids).contains(item.id()));
  }
}
