package clampwise.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The room that a cache takes.
 *
 * @param folder where it lies
 * @param mostBytes how much it may take [bytes]
 * @param now the time, which may be wrong: what is from the future counts as oldest
 */
record CacheSpace(Path folder, long mostBytes, Instant now) {

  /** How files end that are still written, or that a killed run left. */
  static final String PART = ".part";

  private static final Duration ABANDONED = Duration.ofHours(1);

  /** A file, how long ago it was used [s], and its size [bytes]. */
  private record Entry(Path file, long age, long size) {

    boolean isPart() {
      return file.toString().endsWith(PART);
    }
  }

  /** Removes what killed runs left, and the oldest results where there are too many. */
  void tidy() {
    List<Entry> entries = entries();
    entries.removeIf(entry -> entry.isPart() && removesPart(entry));
    long size = entries.stream().mapToLong(Entry::size).sum();
    if (size <= mostBytes) {
      return;
    }
    entries.sort(Comparator.comparingLong(Entry::age).reversed());
    long left = size;
    for (Entry entry : entries) {
      if (left > mostBytes - mostBytes / 4 && !entry.isPart()) {
        remove(entry.file());
        left -= entry.size();
      }
    }
  }

  private static boolean removesPart(Entry entry) {
    if (entry.age() > ABANDONED.toSeconds()) {
      remove(entry.file());
      return true;
    }
    return false;
  }

  private List<Entry> entries() {
    List<Entry> entries = new ArrayList<>();
    try (Stream<Path> files = Files.walk(folder, 2)) {
      files.filter(Files::isRegularFile).forEach(file -> add(file, entries));
    } catch (IOException | UncheckedIOException e) {
      // Another run removes files at the same time; what is left is looked at another day.
    }
    return entries;
  }

  private void add(Path file, List<Entry> entries) {
    try {
      long age = Duration.between(Files.getLastModifiedTime(file).toInstant(), now).toSeconds();
      entries.add(
          new Entry(file, age < -ABANDONED.toSeconds() ? Long.MAX_VALUE : age, Files.size(file)));
    } catch (IOException e) {
      // Gone already.
    }
  }

  private static void remove(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // Another day.
    }
  }
}
