package swineherd.units;

/** An answer cannot be read as what was asked for. */
public final class UnreadableException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String accepted;

  /**
   * @param why what is wrong with it, the answer quoted
   * @param accepted what would be accepted instead
   */
  public UnreadableException(String why, String accepted) {
    super(why);
    this.accepted = accepted;
  }

  /** What would be accepted instead. */
  public String accepted() {
    return accepted;
  }
}
