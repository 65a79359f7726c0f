package clampwise.proof;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A job drawn from a seed in which nothing is wrong: sizes, places and loads are chosen so that
 * every limit is kept with room to spare.
 */
record CleanJob(JobKind kind, long seed, Draft draft) {
  private static final Path FOLDER = Path.of("src/test/resources/clampwise/proof/jobs");
  private static final Map<String, String> TEXTS = new ConcurrentHashMap<>();

  /** The same seed always gives the same job. */
  static CleanJob of(JobKind kind, long seed) {
    Random random = Seeds.random(kind.name().hashCode(), seed);
    boolean second = random.nextInt(10) < 7;
    Words words = new FieldSizes(kind, random, second).words();
    words.put("kind", kind.name().replace(",", "")).put("seed", seed);
    Draft draft = Draft.empty();
    lay(draft, "trunk", words);
    kind.parts().forEach(part -> lay(draft, part, words));
    lay(draft, "counts", words);
    if (second) {
      lay(draft, "second-field", words);
    }
    if (second && kind.has("wired")) {
      lay(draft, "wired-second", words);
    }
    if (!kind.isOf("wave") && random.nextInt(5) < 2) {
      Survey.measure(draft, random);
    }
    return new CleanJob(kind, seed, draft);
  }

  private static void lay(Draft draft, String part, Words words) {
    draft.lay(words.fill(TEXTS.computeIfAbsent(part, CleanJob::text)));
  }

  private static String text(String part) {
    try {
      return Files.readString(FOLDER.resolve(part + ".yaml"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
