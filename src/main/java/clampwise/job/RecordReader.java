package clampwise.job;

import clampwise.source.Node;
import clampwise.source.Problems;
import java.util.Optional;

/** Reads trees of values into records by the habits of the job file, for files beside jobs. */
public final class RecordReader {

  private RecordReader() {}

  /**
   * The record of a tree; what cannot be read of it is reported and left out.
   *
   * @param type a public record whose components are written as those of the job are
   */
  public static <T> Optional<T> read(Node root, Class<T> type, Problems problems) {
    return Binding.bind(root, type, Reading.plain(problems));
  }
}
