package swineherd.advice;

import java.util.List;
import java.util.Set;
import swineherd.outlook.Outlook;
import swineherd.setup.SetupFile;

/**
 * What came of checking a setup.
 *
 * @param file the setup, as it was read
 * @param items what to do, the first first
 * @param tickedOff what the diary says was done and is not due again yet, the latest first
 * @param inOrder what is already in order
 * @param unanswered questions that apply and were not answered
 * @param outlooks what the figures say
 * @param fired the names of all rules that support anything
 */
public record Checklist(
    SetupFile file,
    List<Item> items,
    List<TickedOff> tickedOff,
    List<InOrder> inOrder,
    List<Unanswered> unanswered,
    List<Outlook> outlooks,
    Set<String> fired) {

  /** Something that is already as it should be. */
  public record InOrder(swineherd.rulebook.Card card, Advice advice) {}
}
