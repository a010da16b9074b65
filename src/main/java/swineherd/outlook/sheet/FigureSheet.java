package swineherd.outlook.sheet;

import java.util.ArrayList;
import java.util.List;
import swineherd.figures.OutsideDomainException;
import swineherd.outlook.Climate;
import swineherd.outlook.Outlooks;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * Every figure that the answers about one setup allow, in tables: setup in, sheet out, nothing
 * remembered. What cannot be had has a row that says why.
 *
 * <pre>{@code
 * FigureSheet sheet = FigureSheet.of(setup);
 * sheet.sections().get(0).rows().get(0).figure();
 * }</pre>
 *
 * @param setup what it was worked out from
 * @param sections the tables
 * @param plots the course of each group for charts
 */
public record FigureSheet(Setup setup, List<Section> sections, List<Plot> plots) {
  public FigureSheet {
    sections = List.copyOf(sections);
    plots = List.copyOf(plots);
  }

  /** Works it out. Never throws for a setup that could be read. */
  public static FigureSheet of(Setup setup) {
    Climate climate = new Climate(setup.place());
    Worked worked = new Worked(Outlooks.of(setup));
    List<Pigs> groups = Pigs.of(setup, worked.outlooks());
    List<PenPigs> pens = PenPigs.of(setup, groups);
    List<Section> sections = new ArrayList<>();
    groups.forEach(pigs -> sections.add(GrowthSection.of(pigs, climate)));
    groups.forEach(pigs -> sections.add(FeedSection.of(pigs, worked)));
    sections.add(FeedBuyingSection.of(setup, climate, groups));
    pens.forEach(pen -> sections.add(WaterSection.of(pen, climate)));
    pens.forEach(pen -> sections.add(SpaceSection.of(pen)));
    pens.forEach(pen -> sections.add(GroundSection.of(pen)));
    pens.forEach(pen -> sections.add(WarmthSection.of(pen, climate)));
    for (Pen pen : setup.pens()) {
      sections.add(SunSection.of(pen.name(), worked));
    }
    for (Pen pen : setup.pens()) {
      sections.add(FenceSection.of(pen, there(pens, pen), setup.place().latitude(), worked));
    }
    groups.forEach(pigs -> sections.add(WormSection.of(pigs, worked)));
    groups.forEach(pigs -> sections.add(ReleaseSection.of(pigs, worked)));
    groups.forEach(pigs -> sections.add(SlaughterSection.of(pigs)));
    sections.add(MoneySection.of(setup, groups, strawToOrder(pens, climate)));
    sections.removeIf(section -> section.rows().isEmpty());
    return new FigureSheet(setup, sections, Plot.of(groups, climate, worked));
  }

  /** Null where no pigs of known growth will be in it. */
  private static PenPigs there(List<PenPigs> pens, Pen pen) {
    return pens.stream().filter(p -> p.pen().equals(pen)).findFirst().orElse(null);
  }

  private static double strawToOrder(List<PenPigs> pens, Climate climate) {
    double straw = 0;
    for (PenPigs pen : pens) {
      try {
        straw += WarmthSection.strawToOrder(pen, climate);
      } catch (OutsideDomainException e) {
        // the table of warmth says why
      }
    }
    return straw;
  }
}
