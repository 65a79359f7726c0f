package clampwise.proof;

import clampwise.repository.Scratch;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

/**
 * A git repository of many jobs of every kind, in two of three of which defects were planted. The
 * same number gives the same bytes.
 */
public final class JobForest {

  private static final long SEED = 20_260_101;
  private static final int TRIES = 200;
  private static final int IN_A_FOLDER = 50;

  private final DefectBook book = DefectBook.read();
  private final Path folder;

  private JobForest(Path folder) {
    this.folder = folder;
  }

  /** Writes one: folder and number of jobs. */
  public static void main(String[] arguments) throws IOException {
    write(Path.of(arguments[0]), Integer.parseInt(arguments[1]));
  }

  /** Writes a repository of jobs into a folder, with everything committed. */
  public static void write(Path folder, int jobs) throws IOException {
    JobForest forest = new JobForest(folder);
    for (int job = 0; job < jobs; job++) {
      forest.write(job);
    }
    Scratch scratch = new Scratch(folder).file(".gitignore", "drafts/\n").init();
    scratch.commit();
    scratch.file("drafts/ignored/job.yaml", "job: never reviewed\n");
  }

  private void write(int number) throws IOException {
    String name =
        String.format(Locale.ROOT, "district %d/job %d/job.yaml", number / IN_A_FOLDER, number);
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, draft(number).written().text());
  }

  private Draft draft(int number) {
    JobKind kind = JobKind.ALL.get(number % JobKind.ALL.size());
    CleanJob job = CleanJob.of(kind, SEED + number);
    return number % 3 == 0 ? job.draft() : planted(job, Seeds.random(SEED, number));
  }

  private Draft planted(CleanJob job, Random random) {
    List<Defect> defects = book.defects();
    for (int attempt = 0; attempt < TRIES; attempt++) {
      Defect defect = defects.get(random.nextInt(defects.size()));
      Draft draft = job.draft().copy();
      Optional<Planted> planted =
          defect.isFor(job.kind()) ? defect.plant(draft, random, new Touched()) : Optional.empty();
      if (planted.isPresent()) {
        return draft;
      }
    }
    return job.draft();
  }
}
