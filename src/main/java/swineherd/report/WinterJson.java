package swineherd.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.figures.Band;
import swineherd.outlook.WinterClimate;
import swineherd.outlook.WinterPen;
import swineherd.outlook.WinterStay;
import swineherd.report.WinterView.There;
import swineherd.setup.Setup;
import swineherd.units.Dates;
import swineherd.units.Dimension;

/** The winter of a setup for programs. Fields are added, never renamed; numbers in SI units. */
final class WinterJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Checklist checklist;
  private final Setup setup;
  private final WinterView view;
  private final Wording wording;

  WinterJson(Checklist checklist, WinterView view) {
    this.checklist = checklist;
    this.setup = checklist.file().setup();
    this.view = view;
    this.wording = new Wording(setup.units());
  }

  String render() {
    ObjectNode root = JSON.createObjectNode();
    root.put("checkedOn", setup.checkOn().toString());
    root.put("name", setup.name());
    climate(root.putObject("winter"));
    ArrayNode groups = root.putArray("groups");
    view.groups().forEach(there -> group(groups.addObject(), there));
    root.put("someStay", view.someStay());
    ArrayNode pens = root.putArray("pens");
    view.pens().forEach(needs -> needs(pens.addObject(), needs));
    ArrayNode items = root.putArray("items");
    JsonReport report = new JsonReport(checklist, List.of());
    for (Item item : view.items()) {
      ObjectNode node = items.addObject();
      report.item(node, checklist.items().indexOf(item) + 1, item);
      if (item.due() != null) {
        view.weeksBefore(item.due()).ifPresent(weeks -> node.put("weeksBefore", weeks));
      }
    }
    ArrayNode inOrder = root.putArray("inOrder");
    for (Checklist.InOrder entry : view.inOrder()) {
      inOrder
          .addObject()
          .put("id", entry.card().id())
          .put("about", entry.advice().about())
          .put("heading", wording.fill(entry.card().heading(), entry.advice()));
    }
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private void climate(ObjectNode node) {
    WinterClimate climate = view.climate();
    view.faults().forEach(node.putArray("notWorkedOut")::add);
    if (climate == null) {
      return;
    }
    node.put("kind", climate.kind().name().toLowerCase(Locale.ROOT));
    node.put("class", climate.winterClass() == null ? null : climate.winterClass().name());
    node.put("nights", climate.nights());
    node.put("worstNight", climate.worstNight());
    if (climate.kind() == WinterClimate.Kind.FREEZES) {
      // as in a setup file: the day and month, of no year
      node.put("firstHardFrost", Dates.words(climate.firstHardFrost()));
      node.put("frostSpread", climate.spread());
      node.put("dateTaken", climate.dateTaken());
    }
    ArrayNode assumed = node.putArray("assumed");
    climate.assumed().forEach(assumed::add);
  }

  /** Areas in m2, lengths in m, masses in kg, water in L a day. */
  private static void needs(ObjectNode node, WinterView.Needs needs) {
    WinterPen pen = needs.pen();
    node.put("pen", pen.pen())
        .put("count", pen.count())
        .put("chance", pen.chance())
        .put("heaviest", pen.heaviest())
        .put("bedArea", pen.bedArea())
        .put("bedDepth", pen.bedDepth())
        .put("straw", pen.straw())
        .put("strawMonthly", pen.strawMonthly())
        .put("waterAtFrost", pen.waterThen())
        .put("waterLater", pen.waterLater());
    if (needs.stores() != null) {
      node.put("feedDaily", needs.stores().daily())
          .put("feedDays", needs.stores().days())
          .put("feedReserve", needs.stores().reserve());
    }
  }

  private void group(ObjectNode node, There there) {
    node.put("pigs", there.group().name());
    node.put("pen", there.group().pen());
    WinterStay stay = there.stay();
    if (stay == null || !stay.frostKnown()) {
      return;
    }
    node.put("chance", stay.chance());
    node.put("begun", stay.begun());
    node.put("stays", there.stays());
    node.put("frost", stay.frost().usual().toString());
    node.put("earlyFrost", stay.frost().early().toString());
    node.put("frostEnds", stay.season().end().toString());
    Band weight = stay.weight();
    node.putObject("weight")
        .put("low", weight.low())
        .put("likely", weight.likely())
        .put("high", weight.high())
        .put("unit", Dimension.MASS.base());
  }
}
