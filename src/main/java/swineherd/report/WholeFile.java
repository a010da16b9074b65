package swineherd.report;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * A file that is there whole or not at all: written beside its place and then put there at once.
 */
final class WholeFile {
  private WholeFile() {}

  /**
   * Writes it; what stood there before is replaced, or left as it was.
   *
   * @throws IOException with a reason to be shown as it is
   */
  static void write(byte[] content, Path file) throws IOException {
    Path whole = file.toAbsolutePath();
    if (Files.isDirectory(whole)) {
      throw new IOException("it is a folder");
    }
    Path part =
        whole.resolveSibling("." + whole.getFileName() + "." + ProcessHandle.current().pid());
    try {
      Files.write(part, content);
      try {
        Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(part, whole, StandardCopyOption.REPLACE_EXISTING);
      }
    } catch (NoSuchFileException e) {
      throw new IOException("there is no such folder", e);
    } catch (AccessDeniedException e) {
      throw new IOException("not allowed", e);
    } finally {
      part.toFile().delete();
    }
  }
}
