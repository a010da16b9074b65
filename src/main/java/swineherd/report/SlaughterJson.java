package swineherd.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.Locale;
import swineherd.advice.Item;
import swineherd.figures.Band;
import swineherd.figures.Carcass;
import swineherd.outlook.MeatYield;
import swineherd.outlook.SlaughterPlan;
import swineherd.outlook.SlaughterReadiness;

/** The view before slaughter as JSON: SI units, ISO dates, names that stay. */
final class SlaughterJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final SlaughterView view;
  private final SlaughterWords words;

  SlaughterJson(SlaughterView view) {
    this.view = view;
    this.words = new SlaughterWords(view);
  }

  String render() {
    ObjectNode root = JSON.createObjectNode();
    root.put("checkedOn", view.setup().checkOn().toString());
    root.put("name", view.setup().name());
    ArrayNode groups = root.putArray("groups");
    for (SlaughterReadiness ready : view.groups()) {
      group(groups.addObject(), ready);
    }
    view.law().forEach(root.putArray("law")::add);
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private void group(ObjectNode node, SlaughterReadiness ready) {
    node.put("pigs", ready.pigs());
    node.put("verdict", ready.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    day(node, "day", ready.day());
    day(node, "earliest", ready.blocked() ? null : ready.earliest());
    day(node, "readyOn", ready.readyOn());
    day(node, "finishLikely", ready.finish() == null ? null : ready.finish().likely());
    day(node, "withdrawalOver", ready.blocked() ? null : ready.clearOn());
    node.put("withdrawalUnknown", ready.blocked());
    day(node, "standstillOver", ready.leaveOn());
    day(node, "castrationClear", ready.castrationClearOn());
    day(node, "vaccineFrom", ready.vaccineFrom());
    day(node, "vaccineUntil", ready.vaccineUntil());
    day(node, "tooHeavyFrom", ready.tooHeavyFrom());
    day(node, "bookBy", ready.bookBy());
    node.put("ill", ready.ill());
    node.put("tooHot", ready.tooHot());
    band(node, "weightKg", ready.weight());
    node.put("weightAtLeast", ready.atLeast());
    node.put("targetKg", ready.target());
    ObjectNode why = node.putObject("why");
    words
        .why(ready)
        .forEach((name, words) -> why.put(name.toLowerCase(Locale.ROOT).replace(' ', '-'), words));
    SlaughterPlan plan = view.plan(ready);
    day(node, "planFor", plan.day());
    ArrayNode days = node.putArray("days");
    for (SlaughterPlan.Step step : plan.steps()) {
      days.addObject()
          .put("on", step.on().toString())
          .put("key", step.key())
          .put("what", step.what());
    }
    ArrayNode items = node.putArray("items");
    for (Item item : view.items(ready)) {
      items
          .addObject()
          .put("rank", view.place(item))
          .put("id", item.id())
          .put("heading", view.heading(item))
          .put("dueOn", item.due() == null ? null : item.due().toString())
          .put("do", view.doIt(item))
          .put("caution", view.caution(item));
    }
    view.first(MeatYield.class, y -> y.pigs().equals(ready.pigs()))
        .ifPresent(yield -> meat(node.putObject("meat"), yield));
  }

  private static void meat(ObjectNode node, MeatYield yield) {
    node.put("liveKgEach", yield.live());
    band(node, "hangingKgEach", yield.hanging());
    band(node, "meatKg", yield.meat());
    band(node, "freezerL", yield.freezer());
    band(node, "freezesKgADay", yield.freezesADay());
    ObjectNode cuts = node.putObject("cutsKgEach");
    Carcass.cutsKg(yield.hanging().likely()).forEach(cuts::put);
  }

  private static void day(ObjectNode node, String name, LocalDate day) {
    node.put(name, day == null ? null : day.toString());
  }

  private static void band(ObjectNode node, String name, Band band) {
    if (band == null) {
      node.putNull(name);
    } else {
      node.putObject(name)
          .put("low", band.low())
          .put("likely", band.likely())
          .put("high", band.high());
    }
  }
}
