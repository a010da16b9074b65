package swineherd.outlook;

import java.util.List;
import java.util.Optional;

/**
 * Pigs that are to be trained to the wire on frozen or snowy ground, which insulates them: they
 * feel little, and learn that the wire is nothing.
 *
 * @param pigs name of the group
 * @param pen name of the pen it is meant for
 * @param training what their training takes
 */
public record FrozenTraining(String pigs, String pen, Training training, List<String> grounds)
    implements Outlook {

  /** Nothing where the days do not meet. */
  static Optional<FrozenTraining> of(Training training, FrozenGround frozen) {
    boolean meet =
        training.begin() != null
            && !training.latest().isBefore(frozen.from())
            && !training.begin().isAfter(frozen.to());
    if (!meet) {
      return Optional.empty();
    }
    return Optional.of(
        new FrozenTraining(
            training.pigs(),
            training.pen(),
            training,
            new Grounds().and(training.grounds()).and(frozen.grounds()).list()));
  }
}
