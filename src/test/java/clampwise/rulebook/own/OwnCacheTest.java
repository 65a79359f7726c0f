package clampwise.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.rulebook.OwnRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Compiled rules are kept where nobody else can put any, and never believed when damaged. */
class OwnCacheTest {
  @TempDir private Path home;
  private Path cache;
  private Path folder;

  @BeforeEach
  void aCopyOfTheExample() throws IOException {
    cache = home.resolve("cache/clampwise/own-rules");
    folder = OwnFolderCopy.below(home);
  }

  private OwnRules read() throws IOException {
    OwnRules read = OwnRulesReader.read(folder, "our-rules", Optional.of(cache)).orElseThrow();
    assertThat(read.rules().cards()).hasSize(3);
    assertThat(read.problems()).isEmpty();
    return read;
  }

  private List<Path> kept() throws IOException {
    try (Stream<Path> files = Files.list(cache)) {
      return files.sorted().toList();
    }
  }

  @Test
  void whatWasCompiledIsKeptAndTakenAgain() throws IOException {
    assertThat(read().notes()).isEmpty();
    List<Path> first = kept();
    assertThat(first).singleElement().asString().endsWith(".rules");
    byte[] bytes = Files.readAllBytes(first.get(0));

    assertThat(read().notes()).isEmpty();

    assertThat(kept()).isEqualTo(first);
    assertThat(Files.readAllBytes(first.get(0))).isEqualTo(bytes);
  }

  @Test
  void aChangedRuleIsCompiledAnewAndAChangedPageIsAnotherFingerprint() throws IOException {
    String digest = read().digest();
    OwnFolderCopy.change(folder.resolve(OwnFolderCopy.GAP), "0.015", "0.014");
    String other = read().digest();
    assertThat(kept()).hasSize(2);
    OwnFolderCopy.change(folder.resolve("clamps/own-gap-below-15-mm.md"), "4.2", "4.3");

    assertThat(read().digest()).isNotIn(digest, other);
    assertThat(kept()).hasSize(2);
  }

  @Test
  void damagedFilesAreCompiledAnew() throws IOException {
    read();
    Path file = kept().get(0);
    byte[] whole = Files.readAllBytes(file);
    for (byte[] damaged : List.of(new byte[0], new byte[] {1, 2, 3}, cut(whole), flipped(whole))) {
      Files.write(file, damaged);

      assertThat(read().notes()).isEmpty();

      assertThat(Files.size(file)).isEqualTo(whole.length);
    }
  }

  private static byte[] cut(byte[] whole) {
    return java.util.Arrays.copyOf(whole, whole.length / 2);
  }

  private static byte[] flipped(byte[] whole) {
    byte[] flipped = whole.clone();
    flipped[whole.length / 2] ^= 1;
    return flipped;
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void theFolderIsPrivateAndOneThatOthersCanWriteIsNotUsed() throws IOException {
    read();
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(cache)))
        .isEqualTo("rwx------");
    Path file = kept().get(0);
    Files.write(file, new byte[] {1});
    for (String open : List.of("rwxrwx---", "rwx---rwx", "rwxr-x---")) {
      Files.setPosixFilePermissions(cache, PosixFilePermissions.fromString(open));

      assertThat(read().notes()).singleElement().asString().contains("belong to you alone");

      assertThat(Files.size(file)).isEqualTo(1);
    }
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aLinkToAFolderIsNotUsed() throws IOException {
    Path elsewhere = Files.createDirectories(home.resolve("elsewhere"));
    Files.createDirectories(cache.getParent());
    Files.createSymbolicLink(cache, elsewhere);

    assertThat(read().notes()).singleElement().asString().contains("cannot be written");
    assertThat(elsewhere).isEmptyDirectory();
  }

  @Test
  void whereNothingCanBeKeptTheRulesAreCompiledEachTime() throws IOException {
    Files.writeString(home.resolve("cache"), "no folder");

    assertThat(read().notes()).singleElement().asString().contains("cannot be written");
  }

  @Test
  void twoRunsAtOnceBothGetTheirRules() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(2);
    try {
      Callable<OwnRules> run = this::read;
      List<Future<OwnRules>> runs = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        runs.add(threads.submit(run));
      }
      for (Future<OwnRules> each : runs) {
        assertThat(each.get().notes()).isEmpty();
      }
      assertThat(kept()).hasSize(1);
    } finally {
      threads.shutdownNow();
    }
  }
}
