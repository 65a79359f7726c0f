package clampwise.proof;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.review.Reviewer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Jobs with planted defects get the same verdicts however they are written and turned. */
class MetamorphicTest {
  private static final Reviewer REVIEWER = new Reviewer();
  private static final DefectBook BOOK = DefectBook.read();
  private static final int JOBS_EACH = 4;

  static Stream<JobKind> kinds() {
    return JobKind.ALL.stream().filter(kind -> kind.size() == JobKind.Size.SMALL);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void theOrderOfKeysDoesNotMatter(JobKind kind) {
    holds(kind, MetamorphicTest::shuffled);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void commentsAndEmptyLinesDoNotMatter(JobKind kind) {
    holds(
        kind,
        new Change() {
          @Override
          public Draft of(Draft draft) {
            return draft;
          }

          @Override
          public String text(Draft draft) {
            return draft.written().text().replace("\n", "   # as drawn\n\n");
          }
        });
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void theNamesOfFieldsDoNotMatter(JobKind kind) {
    holds(kind, new OtherNames());
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void unitsDoNotMatter(JobKind kind) {
    holds(kind, new OtherUnits());
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void theOriginOfTheDrawingDoesNotMatter(JobKind kind) {
    holds(kind, new OtherOrigin());
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void leftAndRightDoNotMatter(JobKind kind) {
    holds(kind, new Mirror());
  }

  /** Strings take whole fields, and a run of frames is one within a field, so these stay out. */
  @ParameterizedTest
  @MethodSource("kinds")
  void oneFieldOrTwoSideBySideDoNotMatter(JobKind kind) {
    for (int seed = 1; seed <= JOBS_EACH; seed++) {
      Draft draft = spoiled(kind, seed);
      if (Split.canSplit(draft)) {
        holds(kind, new Split(), draft);
      }
    }
  }

  private static void holds(JobKind kind, Change change) {
    for (int seed = 1; seed <= JOBS_EACH; seed++) {
      holds(kind, change, spoiled(kind, seed));
    }
  }

  private static void holds(JobKind kind, Change change, Draft draft) {
    assertThat(change.found(draft, REVIEWER))
        .as("%s:%n%s%n%s", kind.name(), draft.written().text(), change.text(draft))
        .isEqualTo(change.expected(draft, REVIEWER));
  }

  /** A job with up to three defects. */
  private static Draft spoiled(JobKind kind, int seed) {
    Random random = Seeds.random(seed, kind.name().hashCode());
    Draft draft = CleanJob.of(kind, seed).draft();
    Touched touched = new Touched();
    for (int i = 0; i < 3 * (seed - 1); i++) {
      Defect defect = BOOK.defects().get(random.nextInt(BOOK.defects().size()));
      Draft next = draft.copy();
      boolean planted = defect.isFor(kind) && defect.plant(next, random, touched).isPresent();
      if (planted && !namesMore(next)) {
        draft = next;
      }
    }
    return draft;
  }

  /** Sheets have names that look like those of fields, and squareness is written by field. */
  private static boolean namesMore(Draft draft) {
    return draft.has("install") || draft.has("documents");
  }

  private static Draft shuffled(Draft draft) {
    Draft copy = draft.copy();
    shuffle(copy.root(), new Random(1));
    return copy;
  }

  private static void shuffle(Map<String, Object> map, Random random) {
    List<String> keys = new ArrayList<>(map.keySet());
    Collections.shuffle(keys, random);
    Map<String, Object> before = new LinkedHashMap<>(map);
    map.clear();
    for (String key : keys) {
      map.put(key, before.get(key));
      if (before.get(key) instanceof Map) {
        shuffle(Draft.mapping(before.get(key)), random);
      }
    }
  }
}
