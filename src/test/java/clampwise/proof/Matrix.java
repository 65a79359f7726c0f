package clampwise.proof;

import clampwise.review.Reviewer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;

/** Many runs: every defect by itself in turn, and several at a time in between. */
final class Matrix {
  private static final int SEEDS = 50;
  private static final int TRIES = 200;
  private static final int MOST_AT_ONCE = 4;

  private final DefectBook book;
  private final long seed;
  private final Reviewer reviewer = new Reviewer();

  Matrix(DefectBook book, long seed) {
    this.book = book;
    this.seed = seed;
  }

  /** Runs whose number alone, with the seed, decides what they do. */
  List<Trial> trials(int runs) {
    return IntStream.range(0, runs).parallel().mapToObj(this::trial).toList();
  }

  private Trial trial(int run) {
    Random random = Seeds.random(seed, run);
    return run % 2 == 0 ? alone(run / 2, random) : several(random);
  }

  private Trial alone(int turn, Random random) {
    Defect defect = book.defects().get(turn % book.defects().size());
    List<JobKind> kinds = JobKind.ALL.stream().filter(defect::isFor).toList();
    int round = turn / book.defects().size();
    for (int attempt = 0; attempt < TRIES; attempt++) {
      CleanJob job = job(kinds.get((round + attempt) % kinds.size()), random);
      Optional<Planted> planted = defect.plant(job.draft(), random, new Touched());
      if (planted.isPresent()) {
        return Trial.of(job, List.of(planted.get()), reviewer);
      }
    }
    throw new IllegalStateException(defect + " finds no job that it can be planted in");
  }

  private Trial several(Random random) {
    CleanJob job = job(JobKind.ALL.get(random.nextInt(JobKind.ALL.size())), random);
    int wanted = 2 + random.nextInt(MOST_AT_ONCE - 1);
    Draft draft = job.draft();
    Touched touched = new Touched();
    List<Planted> planted = new ArrayList<>();
    for (int attempt = 0; attempt < TRIES && planted.size() < wanted; attempt++) {
      Defect defect = book.defects().get(random.nextInt(book.defects().size()));
      Draft next = draft.copy();
      Optional<Planted> more =
          defect.isFor(job.kind()) && planted.stream().allMatch(each -> goTogether(each, defect))
              ? defect.plant(next, random, touched)
              : Optional.empty();
      if (more.isPresent()) {
        planted.add(more.get());
        draft = next;
      }
    }
    return Trial.of(new CleanJob(job.kind(), job.seed(), draft), planted, reviewer);
  }

  private static boolean goTogether(Planted planted, Defect other) {
    Set<String> shared = planted.defect().alone();
    shared.retainAll(other.alone());
    return shared.isEmpty();
  }

  private static CleanJob job(JobKind kind, Random random) {
    return CleanJob.of(kind, 1 + random.nextInt(SEEDS));
  }
}
