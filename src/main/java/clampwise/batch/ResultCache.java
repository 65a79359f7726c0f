package clampwise.batch;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Results kept in files, one an entry, from run to run. An entry is written whole or not at all,
 * and one that is broken, or not ours, is as good as none; so any number of runs may share a cache,
 * be killed, or find it full of anything. A cache that cannot be written is given up for the run.
 */
public final class ResultCache {

  /** How much is kept [bytes]. */
  static final long MOST_BYTES = 256L << 20;

  private static final String KIND = "result 1";

  private static final Duration DAY = Duration.ofDays(1);

  private final Optional<Path> folder;
  private final long mostBytes;
  private final Clock clock;
  private final AtomicBoolean failed = new AtomicBoolean();
  private final AtomicInteger written = new AtomicInteger();

  /**
   * A cache in a folder, which need not exist.
   *
   * @param folder where results are kept; nothing is kept when empty
   */
  public ResultCache(Optional<Path> folder) {
    this(folder, MOST_BYTES, Clock.systemUTC());
  }

  ResultCache(Optional<Path> folder, long mostBytes, Clock clock) {
    this.folder = folder;
    this.mostBytes = mostBytes;
    this.clock = clock;
  }

  private Path file(Path in, String key) {
    return in.resolve(key.substring(0, 2)).resolve(key);
  }

  /** What is kept under a key, if it is whole. */
  Optional<byte[]> get(String key) {
    return folder.flatMap(in -> read(file(in, key)));
  }

  private Optional<byte[]> read(Path file) {
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try {
      byte[] content = Packed.unpack(KIND, Files.readAllBytes(file));
      keepYoung(file);
      return Optional.of(content);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** What is in use is not the first to go; told by the day, to write little. */
  private void keepYoung(Path file) throws IOException {
    Instant now = clock.instant();
    Duration age = Duration.between(Files.getLastModifiedTime(file).toInstant(), now);
    if (age.abs().compareTo(DAY) > 0 && Files.isWritable(file)) {
      Files.setLastModifiedTime(file, FileTime.from(now));
    }
  }

  /** Keeps a content under a key. */
  void put(String key, byte[] content) {
    if (folder.isEmpty() || failed.get()) {
      return;
    }
    Path file = file(folder.get(), key);
    try {
      write(file, Packed.pack(KIND, content));
      written.incrementAndGet();
    } catch (IOException e) {
      failed.set(true);
    }
  }

  private void write(Path file, byte[] bytes) throws IOException {
    Path in = file.resolveSibling("");
    Files.createDirectories(in);
    Path part = Files.createTempFile(in, "", CacheSpace.PART);
    try {
      Files.write(part, bytes);
      Files.setLastModifiedTime(part, FileTime.from(clock.instant()));
      move(part, file);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  private static void move(Path part, Path file) throws IOException {
    try {
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Removes the oldest results where there are too many; to be called when a run ends. */
  public void tidy() {
    if (folder.isPresent() && written.get() > 0) {
      new CacheSpace(folder.get(), mostBytes, clock.instant()).tidy();
    }
  }

  /** What the user should know, if anything. */
  public Optional<String> note() {
    return failed.get()
        ? folder.map(in -> "results are not kept: the cache " + in + " cannot be written")
        : Optional.empty();
  }
}
