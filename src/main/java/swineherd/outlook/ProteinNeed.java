package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Band;
import swineherd.figures.Rations;
import swineherd.setup.Setup;

/**
 * The protein a group's feed should have now and later, against what it has. There is one for each
 * group whose growth is known, where the protein of the feed is known. The steps are where the
 * table {@code protein} changes.
 *
 * @param pigs name of the group
 * @param said protein of the feed, %
 * @param weight now or on arrival, kg
 * @param now what it should have at that weight, %
 * @param mid what it should have in the middle step, %
 * @param late what it should have in the last step, %
 * @param on the day that now is
 * @param midFrom when the middle step begins, not before now; null if they go before
 * @param lateFrom when the last step begins, not before now; null if they go before
 * @param tooLittle whether the feed has too little for them now
 * @param enoughFrom when it will be enough for their weight; null if it never is, or is so now
 * @param brief whether that is less than two weeks after they are through the breeder's feed of the
 *     first week and the change-over: then a feed in between is one change more than it is worth
 * @param tooMuchFrom when it begins to have more than they can use; null if it never has
 */
public record ProteinNeed(
    String pigs,
    double said,
    double weight,
    Band now,
    Band mid,
    Band late,
    LocalDate on,
    LocalDate midFrom,
    LocalDate lateFrom,
    boolean tooLittle,
    LocalDate enoughFrom,
    boolean brief,
    LocalDate tooMuchFrom,
    List<String> grounds)
    implements Outlook {

  private static final double MID_FROM = 25;
  private static final double LATE_FROM = 60;

  /** Common practice: a week on the feed they came with, then up to a week of changing over. */
  private static final int CHANGED_OVER_DAYS = 14;

  /** Judgement: no feed is changed for less. */
  private static final int WORTH_A_FEED_DAYS = 14;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    Double said = setup.feed().protein();
    for (Stay stay : Stay.of(setup, courses)) {
      if (said != null && stay.course() != null) {
        all.add(of(stay, said));
      }
    }
    return all;
  }

  private static ProteinNeed of(Stay stay, double said) {
    LocalDate on = stay.from();
    Band now = need(stay, stay.weightOn(on));
    LocalDate enoughFrom = null;
    LocalDate tooMuchFrom = null;
    for (LocalDate day = on; !day.isAfter(stay.to()); day = day.plusDays(1)) {
      Band need = need(stay, stay.weightOn(day));
      if (enoughFrom == null && said >= need.low()) {
        enoughFrom = day;
      }
      if (tooMuchFrom == null && said > need.high()) {
        tooMuchFrom = day;
      }
    }
    boolean tooLittle = said < now.low();
    return new ProteinNeed(
        stay.group().name(),
        said,
        stay.weightOn(on),
        now,
        need(stay, MID_FROM),
        need(stay, LATE_FROM),
        on,
        stay.reach(MID_FROM),
        stay.reach(LATE_FROM),
        tooLittle,
        tooLittle ? enoughFrom : null,
        tooLittle && isBrief(stay, enoughFrom),
        tooMuchFrom,
        stay.grounds().and(stay.path(), "sex", "males").and("feed", "protein").list());
  }

  private static boolean isBrief(Stay stay, LocalDate enoughFrom) {
    LocalDate arrives = stay.group().arrives();
    if (arrives == null || enoughFrom == null) {
      return false;
    }
    LocalDate changedOver = arrives.plusDays(CHANGED_OVER_DAYS);
    return stay.from().isBefore(changedOver)
        && enoughFrom.isBefore(changedOver.plusDays(WORTH_A_FEED_DAYS));
  }

  private static Band need(Stay stay, double weight) {
    return Rations.protein(weight, stay.growthClass().key(), stay.hasEntireMales());
  }
}
