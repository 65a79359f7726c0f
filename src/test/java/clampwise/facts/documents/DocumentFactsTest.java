package clampwise.facts.documents;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.TablesReader;
import clampwise.facts.BaseJob;
import clampwise.job.Choice;
import clampwise.job.Documents.Project;
import clampwise.job.Documents.SheetKind;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a package holds and whether it agrees with itself. */
class DocumentFactsTest {

  @Test
  void theListNamesEveryKindOfDocumentOnce() {
    assertThat(TablesReader.read("documents.yaml").get("package").rows())
        .extracting(row -> row.word("sheet"))
        .containsExactlyInAnyOrderElementsOf(
            Stream.of(SheetKind.values())
                .filter(kind -> kind != SheetKind.OTHER)
                .map(Choice::word)
                .toList());
  }

  /** The marks [read] of the list of documents in a submittal package. */
  @Test
  void whatGuidelinesListIsReadAndTheRestIsPractice() {
    List<String> read =
        TablesReader.read("documents.yaml").get("package").rows().stream()
            .filter(row -> row.word("obtained").equals("read"))
            .map(row -> row.word("sheet"))
            .toList();

    assertThat(read)
        .containsExactly(
            "cover-sheet",
            "roof-plan",
            "elevation",
            "framing-plan",
            "attachment-detail",
            "electrical-diagram",
            "structural-calculation",
            "structural-letter");
  }

  @Test
  void anExpeditedPackageIsShorterThanThatOfADwellingAndThatOfACommercialBuilding() {
    assertThat(needed(Project.EXPEDITED)).isSubsetOf(needed(Project.DWELLING));
    assertThat(needed(Project.DWELLING)).isSubsetOf(needed(Project.COMMERCIAL));
    assertThat(needed(Project.EXPEDITED)).hasSize(5);
  }

  private static List<String> needed(Project project) {
    BaseJob job = BaseJob.with("ready-roof", "documents: {project: " + Choice.word(project) + "}");
    return job.facts(PackagePart.class).stream().map(PackagePart::document).toList();
  }

  @Test
  void aJobWithoutDocumentsIsNotCheckedForOneReason() {
    BaseJob job = BaseJob.with("ready-roof", "documents: ~");

    assertThat(job.facts(PackagePart.class)).isEmpty();
    for (var type : List.of(PackagePart.class, SheetSeal.class, DocumentExpiry.class)) {
      assertThat(job.missing(type))
          .containsExactly("the job says nothing about its documents (documents)");
    }
  }

  @Test
  void withoutTheKindOfProjectNobodyKnowsWhatIsNeeded() {
    BaseJob job = BaseJob.with("ready-roof", "documents: {project: ~}");

    assertThat(job.missing(PackagePart.class))
        .containsExactly("the kind of project is not given (documents: project)");
    assertThat(job.missing(SheetSeal.class))
        .containsExactly("the kind of project is not given (documents: project)");
    assertThat(job.facts(SheetRevision.class)).isNotEmpty();
  }

  @Test
  void withoutADayOfHandingInNoLetterIsInDate() {
    BaseJob job = BaseJob.with("ready-roof", "documents: {handed-in: ~}");

    assertThat(job.facts(DocumentExpiry.class)).isEmpty();
    assertThat(job.missing(DocumentExpiry.class))
        .containsExactly(
            "the day on which the package is handed in is not given (documents: handed-in)");
  }

  /** 2028 is a leap year: from 28 February to 1 March there are two days. */
  @Test
  void daysAreCountedByTheCalendar() {
    String late = "{handed-in: 2028-03-01, sheets: {L-1: {valid-until: 2028-02-28}}}";
    BaseJob job = BaseJob.with("ready-roof", "documents: " + late);

    assertThat(job.facts(DocumentExpiry.class))
        .filteredOn(fact -> fact.sheet().equals("L-1"))
        .extracting(DocumentExpiry::daysOver)
        .containsExactly(2);
  }

  @Test
  void aDrawingWithoutAListOfWhatItShowsIsNotChecked() {
    BaseJob job = BaseJob.with("ready-roof", "documents: {sheets: {A-2: {shows: ~}}}");

    assertThat(job.missing(DrawingBasics.class))
        .containsExactly("what the drawings show is not given (shows)");
  }

  @Test
  void aSecondModuleOfTheLayoutMayBeNamedToo() {
    String two =
        "modules: {M31: {length: 1722 mm, width: 1134 mm}}\n"
            + "fields: {A: {other-modules: {A.R1C1: M31}}}\n"
            + "documents: {sheets: {D-1: {module: M31}}}";

    assertThat(BaseJob.with("ready-roof", two).facts(SheetModule.class))
        .allMatch(SheetModule::agrees);
  }
}
