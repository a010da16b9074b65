package swineherd.outlook;

import java.util.List;

/**
 * What the figures say about one setup: a fact that rules can test. Implemented by records, one for
 * each thing that is worked out.
 */
public interface Outlook {
  /** The paths of the answers it was worked out from: {@code pigs[0].arrivalWeight}. */
  List<String> grounds();
}
