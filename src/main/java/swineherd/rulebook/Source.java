package swineherd.rulebook;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * A published source, named once in {@code rules/sources.yaml} and by its key everywhere else.
 *
 * @param key short name, such as {@code eu-2008-120}
 * @param body who published it: a parliament, a university, a journal
 * @param title title, or number of the law
 * @param year year of publication, or of the text that was read; null where it has none
 * @param address where it can be found; null where body, title and year are enough
 * @param seen {@link Mark#READ} if the figures used were seen there, {@link Mark#MEMORY} if not
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Source(
    String key, String body, String title, Integer year, String address, Mark seen) {

  /** As short as it can be told: body and year. */
  public String brief() {
    return year == null ? body : body + " " + year;
  }

  /** One line for a reader: body, title, year. */
  public String line() {
    String line = body + ", " + title + (year == null ? "" : " (" + year + ")");
    return seen == Mark.MEMORY ? line + ", cited from memory" : line;
  }
}
