package clampwise.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every planted defect is found where it stands, and nothing else is. {@code -Dproof.runs} and
 * {@code -Dproof.seed} choose another matrix than that of the documentation.
 */
class MatrixTest {
  private static final Path PAGE = Path.of("docs/proof.md");
  private static final int RUNS = 2100;
  private static final long SEED = 1;

  /** Rules without an entry in the book, at most: rules that are new get theirs soon. */
  private static final double SHARE_WITHOUT_ENTRY = 0.25;

  private final DefectBook book = DefectBook.read();

  @Test
  void everyPlantedDefectIsFoundAndNoOtherErrorAppears() throws IOException {
    int runs = Integer.getInteger("proof.runs", RUNS);
    long seed = Long.getLong("proof.seed", SEED);
    List<Trial> trials = new Matrix(book, seed).trials(runs);
    assertThat(trials).filteredOn(trial -> !trial.isRight()).isEmpty();
    assertThat(trials).extracting(Trial::kind).contains(JobKind.ALL.toArray(JobKind[]::new));
    Tally tally = new Tally(trials);
    assertThat(tally.byRule().keySet()).isEqualTo(planted());
    if (runs == RUNS && seed == SEED) {
      isWritten(new ProofPage(book, tally).text(runs, seed));
    }
  }

  private static void isWritten(String page) throws IOException {
    if (System.getProperty("update.docs") != null) {
      Files.writeString(PAGE, page);
    }
    assertThat(Files.readString(PAGE))
        .as("mvn -Pquick test -Dtest=MatrixTest -Dupdate.docs")
        .isEqualTo(page);
  }

  @Test
  void theBookNamesRulesThatThereAreAndMostOfThem() throws IOException {
    Set<String> rules = rules();
    Set<String> named = planted();
    assertThat(named).doesNotContainAnyElementsOf(book.without().keySet());
    named.addAll(book.without().keySet());
    assertThat(rules).containsAll(named);
    Set<String> unnamed = new TreeSet<>(rules);
    unnamed.removeAll(named);
    assertThat(unnamed).hasSizeLessThan((int) (SHARE_WITHOUT_ENTRY * rules.size()));
  }

  private Set<String> planted() {
    return book.defects().stream().map(Defect::rule).collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> rules() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("rules"))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".drl"))
          .map(name -> name.substring(0, name.length() - ".drl".length()))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }
}
