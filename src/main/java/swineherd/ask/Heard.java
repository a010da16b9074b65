package swineherd.ask;

import java.util.List;

/**
 * What a typed answer was taken for.
 *
 * @param written as it will stand in the file; several only where a question takes several
 * @param words the same to be read back
 * @param doubt whether it must be confirmed before it counts
 */
record Heard(List<String> written, String words, boolean doubt) {
  static Heard sure(String written, String words) {
    return new Heard(List.of(written), words, false);
  }

  static Heard doubtful(String written, String words) {
    return new Heard(List.of(written), words, true);
  }

  String said() {
    return String.join(", ", written);
  }
}
