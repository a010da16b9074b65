package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * One dated entry of the diary.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param on the day
 * @param pigs name of the group
 * @param pig which of the group, if not all of it: its tag or mark
 * @param did what was done
 * @param weight mean live weight found, kg each
 * @param girth readings of the heart girth of one usual pig, m
 * @param length readings of its length, from between the ears to the root of the tail, m
 * @param active active ingredient given
 * @param route how it was given
 * @param withdrawal meat withdrawal on the label, days
 * @param offLabel whether it was given other than the pack says
 * @param vetWithdrawal meat withdrawal that a vet gave in writing, days
 * @param pen pen they were moved to, or in which something was done
 * @param item id of the item of the checklist that was done
 * @param count how many died
 * @param note anything to remember
 */
public record DiaryEntry(
    LocalDate on,
    String pigs,
    String pig,
    Did did,
    Double weight,
    List<Double> girth,
    List<Double> length,
    String active,
    Route route,
    Double withdrawal,
    Boolean offLabel,
    Double vetWithdrawal,
    String pen,
    String item,
    Integer count,
    String note) {

  public DiaryEntry {
    girth = girth == null ? List.of() : List.copyOf(girth);
    length = length == null ? List.of() : List.copyOf(length);
  }

  /** Note of a move that is only planned for that day: what comes before it is still to be done. */
  public static final String PLANNED = "planned";

  /** Whether it is a move that has not been made yet. */
  public boolean isPlanned() {
    return did == Did.MOVED && note != null && note.strip().equalsIgnoreCase(PLANNED);
  }

  /**
   * Whether it tells that these pigs are there. An item that was done does not: much is done before
   * they come.
   */
  public boolean tellsOf(String name) {
    return did != Did.DONE && Objects.equals(pigs, name);
  }

  /** Number of pigs it is about; one where it was not said. */
  public int countOrOne() {
    return count == null ? 1 : count;
  }

  /** What was done. */
  public enum Did {
    @JsonProperty("weighed")
    WEIGHED,
    @JsonProperty("taped")
    TAPED,
    @JsonProperty("treated")
    TREATED,
    @JsonProperty("moved")
    MOVED,
    @JsonProperty("died")
    DIED,
    @JsonProperty("fed")
    FED,
    @JsonProperty("vet-said")
    VET_SAID,
    @JsonProperty("done")
    DONE
  }

  /** How a medicine is given. */
  public enum Route {
    @JsonProperty("injection")
    INJECTION,
    @JsonProperty("feed")
    FEED,
    @JsonProperty("water")
    WATER,
    @JsonProperty("pour-on")
    POUR_ON,
    @JsonProperty("by-mouth")
    BY_MOUTH
  }
}
