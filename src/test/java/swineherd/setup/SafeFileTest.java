package swineherd.setup;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeFileTest {
  @TempDir Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("pigs.yaml"), text);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void the_new_text_takes_the_place_of_the_old_and_leaves_nothing_beside_it() throws IOException {
    Path path = file("one\n");
    SafeFile again = SafeFile.read(path).write("two\n");
    assertThat(path).hasContent("two");
    again.write("three\n");
    assertThat(path).hasContent("three");
    assertThat(names()).containsExactly("pigs.yaml");
  }

  @Test
  void permissions_and_byte_order_mark_stay() throws IOException {
    Path path = file("\uFEFFone");
    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString("rw-rw----"));
    SafeFile file = SafeFile.read(path);
    assertThat(file.text()).isEqualTo("one");
    file.write("two");
    assertThat(Files.readString(path)).isEqualTo("\uFEFFtwo");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(path)))
        .isEqualTo("rw-rw----");
  }

  @Test
  void a_link_stays_a_link() throws IOException {
    Path path = file("one");
    Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), path.getFileName());
    SafeFile.read(link).write("two");
    assertThat(link).isSymbolicLink();
    assertThat(path).hasContent("two");
  }

  @Test
  void what_somebody_else_wrote_is_never_written_over() throws IOException {
    Path path = file("one");
    SafeFile file = SafeFile.read(path);
    Files.writeString(path, "theirs");
    assertThatThrownBy(() -> file.write("mine")).hasMessageContaining("somebody else changed it");
    assertThat(path).hasContent("theirs");
    Files.delete(path);
    assertThatThrownBy(() -> file.write("mine")).hasMessageContaining("it is gone");
    assertThat(names()).isEmpty();
  }

  @Test
  void a_file_that_is_locked_is_left_alone() throws IOException {
    Path path = file("one");
    try (FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE);
        FileLock lock = channel.lock()) {
      assertThat(lock.isValid()).isTrue();
      assertThatThrownBy(() -> SafeFile.read(path).write("two"))
          .hasMessageContaining("somebody else changed it");
    }
    assertThat(path).hasContent("one");
  }

  @Test
  void a_new_file_is_made_only_where_there_is_none() throws IOException {
    Path path = folder.resolve("new.yaml");
    SafeFile first = SafeFile.read(path);
    SafeFile second = SafeFile.read(path);
    assertThat(first.exists()).isFalse();
    first.write("first");
    assertThatThrownBy(() -> second.write("second")).hasMessageContaining("somebody else");
    assertThat(path).hasContent("first");
    assertThat(names()).containsExactly("new.yaml");
  }

  @Test
  void of_many_who_add_a_line_at_once_each_is_kept_or_told() throws Exception {
    Path path = file("");
    ExecutorService pool = Executors.newFixedThreadPool(8);
    List<Callable<Boolean>> all =
        IntStream.range(0, 200).<Callable<Boolean>>mapToObj(i -> () -> added(path, i)).toList();
    int kept = 0;
    for (Future<Boolean> one : pool.invokeAll(all)) {
      kept += one.get() ? 1 : 0;
    }
    pool.shutdown();
    assertThat(Files.readAllLines(path)).hasSize(kept).doesNotHaveDuplicates();
    assertThat(kept).isPositive();
    assertThat(names()).containsExactly("pigs.yaml");
  }

  private static boolean added(Path path, int line) {
    try {
      SafeFile file = SafeFile.read(path);
      file.write(file.text() + line + "\n");
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  @Test
  void what_is_no_text_or_no_file_is_told() throws IOException {
    Path latin = Files.write(folder.resolve("latin.yaml"), "Grüße".getBytes(ISO_8859_1));
    assertThatThrownBy(() -> SafeFile.read(latin)).hasMessageContaining("not text in UTF-8");
    assertThatThrownBy(() -> SafeFile.read(folder)).hasMessageContaining("not a file");
    Path dangling = Files.createSymbolicLink(folder.resolve("d"), Path.of("nowhere"));
    assertThatThrownBy(() -> SafeFile.read(dangling)).hasMessageContaining("does not exist");
  }
}
