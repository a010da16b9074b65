package swineherd.setup;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * The checks that were recorded of a setup file, beside it under its name and {@code .checks}: a
 * line of JSON for each, only ever added to. A line that was not written to its end, or that
 * somebody changed, is passed over; what stands before and after it stays good.
 *
 * @param file where they stand
 * @param checks those that are whole, in the order they were recorded
 * @param damaged how many lines are not
 */
public record CheckJournal(Path file, List<Check> checks, int damaged) {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Many years of checks; more is not read. */
  private static final long MAX_BYTES = 64L << 20;

  /**
   * One recorded check.
   *
   * @param checkedOn the day as of which it was checked
   * @param text the setup file as it was
   */
  public record Check(LocalDate checkedOn, String text) {}

  /**
   * The journal of a setup file; empty if nothing was recorded yet.
   *
   * @throws IOException if there is one and it cannot be read
   */
  public static CheckJournal of(Path setup) throws IOException {
    Path real = setup.toRealPath();
    Path file = real.resolveSibling(real.getFileName() + ".checks");
    if (!Files.exists(file)) {
      return new CheckJournal(file, List.of(), 0);
    }
    if (Files.size(file) > MAX_BYTES) {
      throw new IOException(file + " is longer than a journal of checks can be");
    }
    List<Check> checks = new ArrayList<>();
    int damaged = 0;
    // decoded leniently: a line cut within a character must not spoil the others
    for (String line : new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\n")) {
      Optional<Check> check = read(line);
      check.ifPresent(checks::add);
      damaged += check.isPresent() || line.isBlank() ? 0 : 1;
    }
    return new CheckJournal(file, List.copyOf(checks), damaged);
  }

  /** The last check as of a day or before; of checks as of the same day the last recorded. */
  public Optional<Check> lastUntil(LocalDate day) {
    Check last = null;
    for (Check check : checks) {
      boolean inTime = !check.checkedOn().isAfter(day);
      if (inTime && (last == null || !check.checkedOn().isBefore(last.checkedOn()))) {
        last = check;
      }
    }
    return Optional.ofNullable(last);
  }

  /**
   * Adds a check, unless it is the same as the last one.
   *
   * @throws IOException if it cannot be written
   */
  public void record(Check check) throws IOException {
    if (!checks.isEmpty() && checks.get(checks.size() - 1).equals(check)) {
      return;
    }
    String line =
        JSON.createObjectNode()
                .put("checkedOn", check.checkedOn().toString())
                .put("recorded", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString())
                .put("sha256", sum(check))
                .put("setup", check.text())
            + "\n";
    try (FileChannel channel =
            FileChannel.open(
                file,
                StandardOpenOption.CREATE,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE);
        FileLock lock = channel.lock()) {
      long end = channel.size();
      ByteBuffer last = ByteBuffer.allocate(1);
      boolean cut = end > 0 && channel.read(last, end - 1) == 1 && last.get(0) != '\n';
      // a line that was cut short keeps its line, and this one gets its own
      ByteBuffer bytes =
          ByteBuffer.wrap(((cut ? "\n" : "") + line).getBytes(StandardCharsets.UTF_8));
      channel.position(end);
      while (lock.isValid() && bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
  }

  private static Optional<Check> read(String line) {
    try {
      JsonNode node = JSON.readTree(line);
      if (node == null || !node.path("setup").isTextual()) {
        return Optional.empty();
      }
      Check check =
          new Check(
              LocalDate.parse(node.path("checkedOn").asText()), node.path("setup").textValue());
      return sum(check).equals(node.path("sha256").asText())
          ? Optional.of(check)
          : Optional.empty();
    } catch (JsonProcessingException | DateTimeException e) {
      return Optional.empty();
    }
  }

  private static String sum(Check check) {
    try {
      byte[] bytes = (check.checkedOn() + "\n" + check.text()).getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }
}
