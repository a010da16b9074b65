package swineherd.advice;

/**
 * A question that applies and was not answered. Rules test it to say what hangs on the answer.
 *
 * @param question its key in the catalogue: {@code pigs.males}
 * @param about the group or pen it is asked of; empty for the whole setup
 * @param path where the answer would stand: {@code pigs[0].males}
 */
public record Unanswered(String question, String about, String path) {}
