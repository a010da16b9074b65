package swineherd.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import swineherd.rulebook.Card;
import swineherd.rulebook.Referral;
import swineherd.rulebook.RuleInfo;
import swineherd.rulebook.Rulebook;
import swineherd.setup.DiaryEntry;
import swineherd.setup.DiaryEntry.Did;
import swineherd.setup.Setup;
import swineherd.setup.Sign;

/**
 * An item that the rules still give but the diary says was done.
 *
 * @param item the item
 * @param on the day it was done
 * @param again the day from which it is on the list again
 */
public record TickedOff(Item item, LocalDate on, LocalDate again) {

  /**
   * Why an item stays on the list whether ticked off or not; null if it can leave. What asks for
   * the vet today, or sooner, goes when its grounds go; so does what asks for an answer, since not
   * knowing is as bad after a tick as before it.
   */
  public static String stays(Card card) {
    if (card.referral().compareTo(Referral.VET_TODAY) >= 0) {
      return "it stays on the list as long as what led to it stands in the file";
    }
    return asks(card)
        ? "it stays on the list until the answer it asks for stands in the file"
        : null;
  }

  /** Whether it goes by an answer: its card says so, or its rule tests that a question is open. */
  private static boolean asks(Card card) {
    RuleInfo rule = Rulebook.rules().get(card.id());
    boolean open =
        rule != null && rule.reads().stream().anyMatch(r -> r.type().equals("Unanswered"));
    return Card.UNTIL_ANSWERED.equals(card.again()) || (open && !card.standsFor().isEmpty());
  }

  /** Takes the items out of a list that were done and are not due again. */
  static List<TickedOff> takeFrom(List<Item> items, Setup setup) {
    List<TickedOff> off = new ArrayList<>();
    if (setup.diary().stream().noneMatch(e -> e.did() == Did.DONE)) {
      return off;
    }
    for (Iterator<Item> all = items.iterator(); all.hasNext(); ) {
      Item item = all.next();
      LocalDate on = stays(item.card()) == null ? lastDone(item, setup) : null;
      if (on == null) {
        continue;
      }
      LocalDate again = on.plusDays(item.card().againDays());
      if (again.isAfter(setup.checkOn()) && !changedSince(item, on, setup)) {
        off.add(new TickedOff(item, on, again));
        all.remove();
      }
    }
    off.sort(Comparator.comparing(TickedOff::on).reversed());
    return List.copyOf(off);
  }

  private static LocalDate lastDone(Item item, Setup setup) {
    return setup.diary().stream()
        .filter(e -> e.did() == Did.DONE && e.on() != null && isOf(item, e))
        .map(DiaryEntry::on)
        .max(Comparator.naturalOrder())
        .orElse(null);
  }

  /** An entry that names neither pigs nor pen is of all that have the item. */
  private static boolean isOf(Item item, DiaryEntry entry) {
    boolean same = item.id().equals(entry.item()) || item.card().formerly().contains(entry.item());
    String about = item.advice().about();
    boolean none = entry.pigs() == null && entry.pen() == null;
    return same && (none || about.equals(entry.pigs()) || about.equals(entry.pen()));
  }

  /** Pigs that stand in another pen, or show a sign, since then: what was done was for before. */
  private static boolean changedSince(Item item, LocalDate on, Setup setup) {
    String about = item.advice().about();
    boolean ofPen = item.because().stream().anyMatch(b -> b.path().startsWith("pens["));
    boolean moved =
        setup.diary().stream()
            .filter(e -> e.did() == Did.MOVED && Objects.equals(e.pigs(), about))
            .anyMatch(e -> e.on() == null || e.on().isAfter(on));
    boolean ofSign = item.because().stream().anyMatch(b -> b.path().startsWith("signs["));
    boolean seen =
        setup.signs().stream()
            .map(Sign::since)
            .anyMatch(since -> since == null || since.isAfter(on));
    return (ofPen && moved) || (ofSign && seen);
  }
}
