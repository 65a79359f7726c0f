package clampwise.batch;

import clampwise.policy.Policy;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.source.Problems;
import clampwise.source.SourceFiles;
import clampwise.source.SourceText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reviews job files, or takes the review from a cache where job, policy, rules, program and every
 * file that the job names are byte for byte what they were. The reviews hold no facts. May be used
 * by several threads.
 */
public final class CachedReviewer {

  private final Reviewer reviewer;
  private final ResultCache cache;
  private final String version;
  private final RecordCodec<Kept> codec = new RecordCodec<>(Kept.class);

  /** A file that a job names, as it was when the job was reviewed. */
  private record Used(String name, String sha256) {}

  /** What is kept of a review. */
  private record Kept(List<Used> files, Review review) {}

  /**
   * A reviewer that looks into a cache first.
   *
   * @param version a word that differs where program or rules do
   */
  public CachedReviewer(Reviewer reviewer, ResultCache cache, String version) {
    this.reviewer = reviewer;
    this.cache = cache;
    this.version = version;
  }

  /** The review of a job file. */
  public Review review(Path file) {
    SourceFiles files = SourceFiles.beside(file);
    Optional<byte[]> text = SourceFiles.read(file, new Problems());
    Policy policy = reviewer.policy(file);
    if (text.isEmpty() || !policy.problems().isEmpty()) {
      return light(new Kept(List.of(), reviewer.review(file))).review();
    }
    byte[] job = text.get();
    String name = SourceFiles.nameOf(file);
    String key = Digests.of(List.of(version, policy.digest(), name, Digests.of(job)));
    return kept(key, files).orElseGet(() -> fresh(key, file, job)).review();
  }

  private Optional<Kept> kept(String key, SourceFiles files) {
    return cache.get(key).flatMap(this::decoded).filter(kept -> holds(kept, files));
  }

  private Optional<Kept> decoded(byte[] bytes) {
    try {
      return Optional.of(codec.decode(bytes));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static boolean holds(Kept kept, SourceFiles files) {
    for (Used used : kept.files()) {
      Optional<SourceText> now = files.look(used.name());
      if (now.isEmpty() || !now.get().sha256().equals(used.sha256())) {
        return false;
      }
    }
    return true;
  }

  private Kept fresh(String key, Path file, byte[] job) {
    SourceFiles files = SourceFiles.beside(file);
    Review review = reviewer.review(file, job, files);
    List<Used> used = new ArrayList<>();
    for (Map.Entry<String, Optional<SourceText>> asked : files.asked().entrySet()) {
      asked.getValue().ifPresent(text -> used.add(new Used(asked.getKey(), text.sha256())));
    }
    byte[] bytes = codec.encode(new Kept(used, review));
    // What stands in the place of a missing file depends on its folder, so it is not kept.
    if (used.size() == files.asked().size()) {
      cache.put(key, bytes);
    }
    return light(bytes);
  }

  /** The same without facts. */
  private Kept light(Kept whole) {
    return light(codec.encode(whole));
  }

  private Kept light(byte[] bytes) {
    try {
      return codec.decode(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
