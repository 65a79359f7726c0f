package clampwise.batch;

import clampwise.finding.Threshold;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The results of a share of a list of jobs, as they are carried from one machine to another.
 *
 * @param build which build of the program reviewed them
 * @param ownRules fingerprint of the own rules that were asked too; empty if there were none
 * @param asked what else the reviews rest on: the policy and the day that were named
 * @param failOn threshold that was asked for
 * @param list digest of the names of all jobs
 * @param jobs how many jobs there are in all
 * @param share which of them these are
 * @param results what became of them, in their order
 */
public record Part(
    String build,
    String ownRules,
    String asked,
    Optional<Threshold> failOn,
    String list,
    int jobs,
    Share share,
    List<JobResult> results) {

  private static final String KIND = "part 2";

  private static final RecordCodec<Part> CODEC = new RecordCodec<>(Part.class);

  /** The digest of the names of jobs. */
  public static String digest(List<String> names) {
    return Digests.of(names);
  }

  /** Its bytes in a file. */
  public byte[] bytes() throws IOException {
    return Packed.pack(KIND, CODEC.encode(this));
  }

  /** The part in a file; what is none, or was damaged, is an error. */
  public static Part read(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      Part part = CODEC.decode(Packed.unpack(KIND, in.readAllBytes()));
      if (!part.isWhole()) {
        throw new IOException("a part without some of its results");
      }
      return part;
    }
  }

  private boolean isWhole() {
    return share.part() >= 1
        && share.part() <= share.parts()
        && jobs >= 0
        && results.size() == share.of(jobs);
  }
}
