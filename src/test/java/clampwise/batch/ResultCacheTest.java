package clampwise.batch;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ResultCacheTest {

  private static final String KEY = Digests.of(List.of("key"));
  private static final byte[] CONTENT = "what was found".getBytes(UTF_8);
  private static final long MANY = 1L << 20;

  @TempDir private Path temporary;
  private Path folder = Path.of("");

  @BeforeEach
  void aFolderThatIsNotThereYet() {
    folder = temporary.resolve("made/when/needed");
  }

  private ResultCache at(String time, long mostBytes) {
    Clock clock = Clock.fixed(Instant.parse(time), ZoneOffset.UTC);
    return new ResultCache(Optional.of(folder), mostBytes, clock);
  }

  private ResultCache cache() {
    return new ResultCache(Optional.of(folder));
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    }
  }

  @Test
  void whatWasPutIsThereInTheNextRun() throws IOException {
    assertThat(cache().get(KEY)).isEmpty();
    cache().put(KEY, CONTENT);
    assertThat(cache().get(KEY)).contains(CONTENT);
    assertThat(files()).hasSize(1);
  }

  @Test
  void aCacheWithoutAFolderKeepsNothing() {
    ResultCache none = new ResultCache(Optional.empty());
    none.put(KEY, CONTENT);
    none.tidy();
    assertThat(none.get(KEY)).isEmpty();
    assertThat(none.note()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void anEntryThatIsNotWholeIsNoneAndIsWrittenAnew(int seed) throws IOException {
    Random random = new Random(seed);
    byte[] content = new byte[500];
    random.nextBytes(content);
    cache().put(KEY, content);
    Path file = files().get(0);
    byte[] whole = Files.readAllBytes(file);
    for (int i = 0; i < 200; i++) {
      byte[] broken = whole.clone();
      broken[random.nextInt(broken.length)] ^= (byte) (1 + random.nextInt(255));
      Files.write(file, broken);
      assertThat(cache().get(KEY).filter(read -> !Arrays.equals(read, content))).isEmpty();
      Files.write(file, Arrays.copyOf(whole, random.nextInt(whole.length)));
      assertThat(cache().get(KEY)).isEmpty();
    }
    cache().put(KEY, content);
    assertThat(cache().get(KEY)).contains(content);
  }

  @Test
  void somethingElseInItsPlaceIsNoEntry() throws IOException {
    cache().put(KEY, CONTENT);
    Path file = files().get(0);
    Files.writeString(file, "notes of somebody else");
    assertThat(cache().get(KEY)).isEmpty();
    Files.delete(file);
    Files.createDirectories(file.resolve("a folder"));
    assertThat(cache().get(KEY)).isEmpty();
  }

  @Test
  void aFolderThatCannotBeMadeIsNotedOnceAndTheCacheGivenUp() throws IOException {
    Files.writeString(temporary.resolve("made"), "a file where a folder should be");
    ResultCache cache = cache();
    cache.put(KEY, CONTENT);
    cache.put(KEY, CONTENT);
    cache.tidy();
    assertThat(cache.get(KEY)).isEmpty();
    assertThat(cache.note())
        .contains("results are not kept: the cache " + folder + " cannot be written");
  }

  @Test
  void theOldestGoWhereThereAreTooMany() throws IOException {
    byte[] content = new byte[1000];
    new Random(1).nextBytes(content);
    for (int day = 1; day <= 9; day++) {
      at("2026-01-0" + day + "T00:00:00Z", MANY).put(key(day), content);
    }
    at("2026-01-09T12:00:00Z", MANY).get(key(1));
    ResultCache last = at("2026-01-10T00:00:00Z", 6_000);
    last.put(key(10), content);
    last.tidy();
    assertThat(
            Stream.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10)
                .filter(day -> cache().get(key(day)).isPresent()))
        .containsExactly(1, 8, 9, 10);
  }

  private static String key(int number) {
    return Digests.of(List.of("job " + number));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1970-01-01T00:00:00Z", "2150-01-01T00:00:00Z"})
  void aWrongClockNeitherLosesNorKeepsTooMuch(String wrong) throws IOException {
    byte[] content = new byte[1000];
    new Random(1).nextBytes(content);
    for (int job = 1; job <= 9; job++) {
      at(wrong, MANY).put(key(job), content);
    }
    assertThat(at("2026-01-01T00:00:00Z", MANY).get(key(5))).contains(content);
    ResultCache now = at("2026-01-01T00:00:00Z", 6_000);
    now.put(key(10), content);
    now.tidy();
    assertThat(now.get(key(10))).contains(content);
    assertThat(now.get(key(5))).contains(content);
    assertThat(files()).hasSizeBetween(2, 5);
  }

  @Test
  void whatKilledRunsLeftGoesAndWhatIsBeingWrittenStays() throws IOException {
    cache().put(KEY, CONTENT);
    Path old = Files.createFile(files().get(0).resolveSibling("1.part"));
    Path ahead = Files.createFile(old.resolveSibling("2.part"));
    Path young = Files.createFile(old.resolveSibling("3.part"));
    Files.setLastModifiedTime(old, FileTime.from(Instant.now().minusSeconds(7200)));
    Files.setLastModifiedTime(ahead, FileTime.from(Instant.now().plusSeconds(1_000_000)));
    ResultCache cache = cache();
    cache.put(KEY, CONTENT);
    cache.tidy();
    assertThat(old).doesNotExist();
    assertThat(ahead).doesNotExist();
    assertThat(young).exists();
  }

  @Test
  void theProgramKnowsItself() {
    assertThat(BuildIdentity.read()).hasSize(64).isEqualTo(BuildIdentity.read());
  }
}
