package swineherd.outlook;

import java.util.List;
import java.util.Set;
import swineherd.rulebook.Referral;

/**
 * One sign that pigs of a group show, and how soon somebody must be called for it alone. A sign may
 * be written down, or follow from a temperature or a count of breaths that was.
 *
 * @param pigs name of the group; empty if it was not said and there are several
 * @param sign key in the table signs
 * @param level how soon; {@link Referral#NONE} is to watch it
 * @param toldBy ids of the items that tell this sign along with their own and call no later: where
 *     one of them stands on the list it needs no item of its own
 * @param calledBy ids of the items for which somebody must be called sooner than for this sign:
 *     where one of them stands on the list, that call tells of this sign too
 */
public record Noted(
    String pigs,
    String sign,
    Referral level,
    Set<String> toldBy,
    Set<String> calledBy,
    List<String> grounds)
    implements Outlook {}
