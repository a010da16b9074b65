package swineherd.setup;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.util.Arrays;

/**
 * A file of text that is read, then written whole or not at all: the new text goes into a file
 * beside it, to the disk, and takes its place in one step. What somebody else wrote in the meantime
 * is never written over.
 *
 * <pre>{@code
 * SafeFile file = SafeFile.read(Path.of("pigs.yaml"));
 * file.write(file.text().replace("45 lb", "48 lb"));
 * }</pre>
 */
public final class SafeFile {
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private final Path path;
  private final byte[] bytes; // as read; null if there was no file
  private final String text;

  private SafeFile(Path path, byte[] bytes, String text) {
    this.path = path;
    this.bytes = bytes;
    this.text = text;
  }

  /**
   * Reads a file; a file that does not exist yet is empty.
   *
   * @param path the file, or a link to it
   * @throws IOException if it cannot be read, is not text in UTF-8, or is longer than a setup can
   *     be (1 MiB)
   */
  public static SafeFile read(Path path) throws IOException {
    if (!Files.exists(path)) {
      if (Files.isSymbolicLink(path)) {
        throw new IOException("it is a link to a file that does not exist");
      }
      return new SafeFile(path.toAbsolutePath(), null, "");
    }
    Path real = path.toRealPath();
    byte[] bytes = bytes(real);
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return new SafeFile(real, bytes, text);
    } catch (CharacterCodingException e) {
      throw new IOException("it is not text in UTF-8", e);
    }
  }

  /** Whether there was such a file. */
  public boolean exists() {
    return bytes != null;
  }

  /** The text as it was read, without a byte order mark. */
  public String text() {
    return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
  }

  /**
   * Puts a new text in its place. Permissions stay, and so does a byte order mark.
   *
   * @return the file as it is now, to be written again
   * @throws IOException if it cannot be written, or is not any more what was read; the file is as
   *     it was then
   */
  public SafeFile write(String changed) throws IOException {
    String whole = text.startsWith(BYTE_ORDER_MARK) ? BYTE_ORDER_MARK + changed : changed;
    byte[] now = whole.getBytes(StandardCharsets.UTF_8);
    if (bytes == null) {
      create(now);
    } else {
      replace(now);
    }
    return new SafeFile(path, now, whole);
  }

  private void replace(byte[] now) throws IOException {
    if (!Files.exists(path)) {
      throw new IOException("it is gone; nothing was written");
    }
    if (!Files.isWritable(path)) {
      throw new IOException("it may not be written");
    }
    // keeps others of us out; they find the file changed when they come in
    try (FileChannel old = FileChannel.open(path, StandardOpenOption.WRITE);
        FileLock lock = old.tryLock()) {
      if (lock == null) {
        throw changed();
      }
      Path fresh = beside(now);
      try {
        likeBefore(fresh);
        if (!Arrays.equals(bytes, bytes(path))) {
          throw changed();
        }
        move(fresh);
      } finally {
        Files.deleteIfExists(fresh);
      }
    } catch (OverlappingFileLockException e) {
      throw changed();
    }
    syncFolder();
  }

  private void create(byte[] now) throws IOException {
    Path fresh = beside(now);
    try {
      link(fresh);
    } catch (FileAlreadyExistsException e) {
      throw changed();
    } finally {
      Files.deleteIfExists(fresh);
    }
    syncFolder();
  }

  /** Gives a new file its name, only if there is none of that name. */
  private void link(Path fresh) throws IOException {
    try {
      Files.createLink(path, fresh);
    } catch (UnsupportedOperationException e) { // a disk without links
      Files.move(fresh, path);
    }
  }

  private Path beside(byte[] now) throws IOException {
    Path folder = path.getParent();
    if (!Files.isDirectory(folder) || !Files.isWritable(folder)) {
      throw new IOException("the folder " + folder + " may not be written");
    }
    Path fresh =
        folder.resolve(
            "."
                + path.getFileName()
                + "."
                + ProcessHandle.current().pid()
                + "-"
                + Long.toHexString(System.nanoTime())
                + ".new");
    try (FileChannel channel =
        FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer left = ByteBuffer.wrap(now);
      while (left.hasRemaining()) {
        channel.write(left);
      }
      channel.force(true);
    } catch (IOException e) {
      Files.deleteIfExists(fresh);
      throw e;
    }
    return fresh;
  }

  private void likeBefore(Path fresh) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
    if (view == null) {
      return; // a disk without such permissions
    }
    PosixFileAttributes before =
        Files.readAttributes(path, PosixFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    PosixFileAttributes now = view.readAttributes();
    if (!before.group().equals(now.group())) {
      try {
        view.setGroup(before.group());
      } catch (IOException e) {
        throw new IOException("its group " + before.group().getName() + " cannot be kept", e);
      }
    }
    view.setPermissions(before.permissions());
  }

  private void move(Path fresh) throws IOException {
    try {
      Files.move(fresh, path, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      throw new IOException("this disk cannot replace a file in one step", e);
    }
  }

  /** A new name lasts through a power cut once its folder is on the disk too. */
  private void syncFolder() {
    try (FileChannel folder = FileChannel.open(path.getParent(), StandardOpenOption.READ)) {
      folder.force(true);
    } catch (IOException e) {
      // not every system can; the file itself is on the disk
    }
  }

  private static byte[] bytes(Path path) throws IOException {
    if (!Files.isRegularFile(path)) {
      throw new IOException("it is not a file");
    }
    if (Files.size(path) > SetupReader.MAX_BYTES) {
      throw new IOException("it is longer than a setup can be, 1 MiB");
    }
    return Files.readAllBytes(path);
  }

  private static IOException changed() {
    return new IOException("somebody else changed it in the meantime; nothing was written");
  }
}
