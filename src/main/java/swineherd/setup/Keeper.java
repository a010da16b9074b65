package swineherd.setup;

/**
 * Who keeps the pigs, and who comes near them.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param firstTime whether these are the keeper's first pigs
 * @param children whether children live at or come to the place
 * @param atRisk whether somebody about is pregnant, very old or has weak defences
 * @param heartDevice whether anyone about has a pacemaker or another device for the heart
 * @param vet whether a vet who sees pigs knows of these
 * @param registered whether keeper and land are registered for pigs
 * @param escapePlan whether what brings a loose pig back is ready
 */
public record Keeper(
    Boolean firstTime,
    Boolean children,
    Boolean atRisk,
    Boolean heartDevice,
    Boolean vet,
    Boolean registered,
    Boolean escapePlan) {

  static final Keeper UNKNOWN = new Keeper(null, null, null, null, null, null, null);
}
