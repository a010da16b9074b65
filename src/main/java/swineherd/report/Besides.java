package swineherd.report;

import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.figures.Triage;
import swineherd.rulebook.Card;
import swineherd.rulebook.Referral;

/**
 * How an item reads beside others: where somebody is called sooner for something else, an item
 * about signs names no later call of its own.
 */
final class Besides {
  private final Referral soonest;

  Besides(Checklist checklist) {
    soonest =
        checklist.items().stream()
            .map(Item::referral)
            .filter(r -> r.compareTo(Referral.VET_TODAY) >= 0)
            .reduce(Referral.NONE, Triage::higher);
  }

  private boolean isBesides(Item item) {
    return item.card().besides() != null && item.referral().compareTo(soonest) < 0;
  }

  /** The heading, its places still to be filled. */
  String heading(Item item) {
    return isBesides(item) ? item.card().besides() : item.card().heading();
  }

  /** Whom to call, a sentence; null if nobody. */
  String call(Item item) {
    Card card = item.card();
    if (isBesides(item)) {
      return "Tell it with the call that comes first.";
    }
    return card.referral() == Referral.NONE ? null : card.referral().words();
  }
}
