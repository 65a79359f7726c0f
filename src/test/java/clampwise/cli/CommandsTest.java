package clampwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Severity;
import clampwise.report.SampleReview;
import clampwise.review.Review;
import clampwise.rulebook.RulePage;
import clampwise.source.Problem;
import clampwise.source.Span;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandsTest {

  private static final List<RulePage> PAGES =
      List.of(
          new RulePage("gap-too-small", "gaps", Severity.ERROR, "# Gap too small\n\nBody.\n"),
          new RulePage("seam-missed", "seams", Severity.WARNING, "# Seam missed\n\nBody.\n"));

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private Console console(OutputStream output, Screen screen) {
    return new Console(InputStream.nullInputStream(), output, err, Map.of(), screen);
  }

  private int run(Desk desk, String... arguments) {
    return new Clampwise(console(out, Screen.NONE), any -> desk, () -> PAGES).run(arguments);
  }

  private int run(String... arguments) {
    return run((name, console) -> review(name), arguments);
  }

  private static Problem missing() {
    return Problem.of(Span.startOf("nowhere"), "no file named \"nowhere\"", "a file that exists");
  }

  @Test
  void ofAFileThatIsNotThereOnlyThatIsSaid() {
    String said =
        """
        Could not be read (1)

          nowhere:1:1
              found   no file named "nowhere"
              wanted  a file that exists
        """;
    assertThat(run("review", "nowhere")).isEqualTo(2);
    assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo(said);
    out.reset();
    run("review", "--quiet", "nowhere");
    assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo(said);
    out.reset();
    run("review", "nowhere", "errors");
    assertThat(out.toString(StandardCharsets.UTF_8)).startsWith(said).contains("On the roof");
  }

  /** The name of a job says what its review finds. */
  private static Review review(String name) {
    return switch (name) {
      case "unreadable" -> SampleReview.full();
      case "errors" -> SampleReview.of(SampleReview.frame());
      case "nowhere" ->
          new Review(name, "", 0, List.of(missing()), List.of(), List.of(), List.of());
      case "notes" -> SampleReview.saying("a note");
      case "broken" -> throw new IllegalStateException("wheel came off");
      default -> SampleReview.of();
    };
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String complaint() {
    return err.toString(StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @CsvSource({
    "clear, error, 0",
    "errors, error, 1",
    "errors, never, 0",
    "notes, error, 0",
    "notes, warning, 0",
    "notes, note, 1",
    "unreadable, never, 2",
    "broken, error, 70"
  })
  void theExitCodeFollowsTheThreshold(String job, String threshold, int code) {
    assertThat(run("review", "--fail-on", threshold, job)).isEqualTo(code);
  }

  @Test
  void aCalculationSheetIsWrittenBesideTheReview(@TempDir Path folder) {
    Path sheet = folder.resolve("sheet.md");
    assertThat(run("review", "--calc-sheet", sheet.toString(), "clear")).isZero();
    assertThat(sheet).content().contains("Calculation sheet", "not an engineer's approval");
    assertThat(printed()).contains("Review of");
  }

  @Test
  void aSheetOfAnUnknownKindIsRefusedBeforeAnythingIsReviewed(@TempDir Path folder) {
    String sheet = folder.resolve("sheet.doc").toString();
    assertThat(run("review", "--calc-sheet", sheet, "clear")).isEqualTo(2);
    assertThat(complaint()).contains("ends in .md or .json, not " + sheet);
    assertThat(printed()).isEmpty();
  }

  @Test
  void theWorstJobDecidesAndNoneIsLost() {
    assertThat(run("review", "--lines", "errors", "broken", "unreadable", "notes")).isEqualTo(70);
    assertThat(printed()).contains("frame-outside-mid-clamp-range", "not-readable", "a note");
  }

  @Test
  void aFaultIsOneLineWithoutATrace() {
    run("review", "broken");
    assertThat(complaint().lines()).hasSize(1);
    assertThat(complaint()).contains("broken: internal fault").contains("wheel came off");
  }

  @Test
  void aDeveloperMayAskForTheTrace() {
    Console asked =
        new Console(
            InputStream.nullInputStream(), out, err, Map.of(Faults.TRACE, "1"), Screen.NONE);
    new Clampwise(asked, any -> (name, console) -> review(name), List::of).run("review", "broken");
    assertThat(complaint()).contains("IllegalStateException: wheel came off").contains("\tat ");
  }

  @Test
  void standardInputReachesTheDesk() {
    Console typed =
        new Console(
            new ByteArrayInputStream("job: Shed".getBytes(StandardCharsets.UTF_8)),
            out,
            err,
            Map.of(),
            Screen.NONE);
    int code = new Clampwise(typed, ReviewDesk::new, List::of).run("review", "--lines", "-");
    assertThat(code).isIn(ExitCode.CLEAR, ExitCode.UNUSABLE);
    assertThat(printed().lines())
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line).startsWith("<stdin>:"));
  }

  @Test
  void quietPrintsNothingWhenNothingMatters() {
    assertThat(run("review", "--quiet", "notes")).isZero();
    assertThat(printed()).isEmpty();
  }

  @Test
  void theShortFormOfQuietIsTheSame() {
    assertThat(run("review", "-q", "notes")).isZero();
    assertThat(printed()).isEmpty();
  }

  @Test
  void fishCompletesCommandsOptionsAndTheirValues() {
    assertThat(run("completion", "fish")).isZero();
    assertThat(printed().lines())
        .allMatch(line -> line.startsWith("complete -c clampwise -n '__fish_"))
        .anyMatch(line -> line.contains("__fish_use_subcommand' -f -a review -d 'Reviews jobs"))
        .anyMatch(line -> line.contains("_from review' -s q -l quiet -d "))
        .anyMatch(line -> line.contains("-l fail-on -x -a 'error warning note never' -d"));
  }

  @Test
  void quietKeepsWhatReachesTheThreshold() {
    run("review", "--quiet", "errors");
    assertThat(printed()).contains("Errors (1)").doesNotContain("Counts", "On the roof");
  }

  @ParameterizedTest
  @CsvSource({
    "reviw, the nearest is review",
    "job.yaml, to review a job\\, write clampwise review job.yaml",
    "help, for help\\, write clampwise --help",
    "-x, there is no option -x"
  })
  void aWrongWordIsAnsweredWithTheNearest(String word, String answer) {
    assertThat(run(word)).isEqualTo(ExitCode.UNUSABLE);
    assertThat(complaint()).contains(answer.replace("\\", ""));
  }

  @Test
  void aWrongOptionOrValueIsAnsweredWithTheNearest() {
    assertThat(run("review", "--formt", "json", "a")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(run("review", "--format", "jsn", "a")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(run("completion", "bsh")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(complaint().lines())
        .hasSize(3)
        .satisfiesExactly(
            line -> assertThat(line).contains("the nearest is --format"),
            line -> assertThat(line).contains("the nearest is json"),
            line -> assertThat(line).contains("the nearest is bash"));
  }

  @Test
  void whatIsMissingIsNamed() {
    assertThat(run("review")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(run("review", "a", "--format")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(run("start", "a", "b")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(run()).isEqualTo(ExitCode.UNUSABLE);
    assertThat(complaint())
        .contains("JOB is missing", "FORMAT is missing", "b is one word too many")
        .contains("no command given");
  }

  @Test
  void jsonIsAlwaysComplete() {
    assertThat(run("review", "--format", "json", "--quiet", "a")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(complaint()).contains("leave out --quiet");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "review", "explain", "start", "schema", "completion"})
  void everyCommandHelps(String command) {
    String[] words = command.isEmpty() ? new String[] {"-h"} : new String[] {command, "--help"};
    assertThat(run(words)).isZero();
    assertThat(printed()).contains("Usage: clampwise").contains("clampwise " + command);
    assertThat(printed().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void everyRuleIsListedByTopicAndExplained() {
    assertThat(run("explain")).isZero();
    assertThat(run("explain", "gap-too-small")).isZero();
    assertThat(printed())
        .contains("gaps\n  gap-too-small\n      Gap too small (error)\n")
        .endsWith("Gap too small\n\n  Body.\n");
  }

  @Test
  void anUnknownRuleIsAnsweredWithTheNearest() {
    assertThat(run("explain", "gap-to-small")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(complaint()).contains("the nearest is gap-too-small");
  }

  @Test
  void bothSchemasArePrinted() {
    assertThat(run("schema", "--review")).isZero();
    assertThat(printed()).contains("clampwise-review/1");
  }

  @Test
  void completionKnowsEveryCommand() {
    assertThat(run("completion", "bash")).isZero();
    assertThat(printed())
        .contains("review merge accept record compare policy takeoff explain rules")
        .contains("review,--fail-on) words='error warning note never'")
        .contains("explain,0,*) words='gap-too-small seam-missed'")
        .contains("completion,0,*) words='bash zsh fish'")
        .contains("rules,0,*) words='test list'")
        .containsPattern("calc,0,.*velocity-pressure");
  }

  @Test
  void zshHasAScriptOfItsOwn() {
    assertThat(run("completion", "zsh")).isZero();
    assertThat(printed())
        .startsWith("#compdef clampwise\n")
        .contains("explain) _arguments", "'1: :(gap-too-small seam-missed)'")
        .contains("--calc-sheet[", ": :_files'", "'*: :_files'")
        .doesNotContain("COMPREPLY");
  }

  @ParameterizedTest
  @CsvSource({
    "clampwise rev, review",
    "clampwise explain se, seam-missed",
    "clampwise completion f, fish",
    "clampwise review --format j, json",
    "clampwise review --calc-sheet out.m, ''",
    "clampwise review j2, ''"
  })
  @DisabledOnOs(OS.WINDOWS)
  void bashOffersWordsAndLeavesFilesToItself(String line, String offered, @TempDir Path folder)
      throws Exception {
    run("completion", "bash");
    Path script = Files.writeString(folder.resolve("c.bash"), printed());
    String ask =
        ("source %s; COMP_WORDS=(%s); COMP_CWORD=$((${#COMP_WORDS[@]} - 1)); _clampwise;"
                + " echo -n \"${COMPREPLY[*]}\"")
            .formatted(script, line);
    Process bash = new ProcessBuilder("bash", "-c", ask).redirectErrorStream(true).start();
    assertThat(new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
        .isEqualTo(offered);
  }

  @ParameterizedTest
  @ValueSource(strings = {"-h", "--help"})
  void helpBeforeACommandIsTheHelpOfThatCommand(String help) {
    assertThat(run(help, "review")).isZero();
    assertThat(printed()).startsWith("Usage: clampwise review ");
  }

  @Test
  void aNameBeyondTheLocaleNamesTheLocale() {
    Problem problem = JobSource.unusable("dach.yaml", "ANSI_X3.4-1968");
    assertThat(problem.found()).contains("the locale's encoding, ANSI_X3.4-1968");
    assertThat(problem.expected()).contains("LC_ALL=C.UTF-8");
    assertThat(JobSource.unusable("dach.yaml", "UTF-8").found()).contains("no file can have");
  }

  @Test
  void explainSaysHowExamplesAreToBeRead() {
    RulePage page = new RulePage("r", "t", Severity.ERROR, "# R\n\n## Examples\n\n### Fires: a\n");
    new Clampwise(
            console(out, Screen.NONE), any -> (name, screen) -> review(name), () -> List.of(page))
        .run("explain", "r");
    assertThat(printed()).contains("Examples\n\n  An example is not a whole job.");
  }

  @Test
  void coloursAreOnlyForATerminal() {
    run("review", "errors");
    assertThat(printed()).doesNotContain("\u001b");
    Console terminal = console(out, new Screen(true, 90));
    new Clampwise(terminal, any -> (name, console) -> review(name), List::of)
        .run("review", "errors");
    assertThat(printed()).contains("\u001b[1;31m");
  }

  @Test
  void outputThatCannotBeWrittenIsSaid() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int ignored) throws IOException {
            throw new IOException("No space left on device");
          }
        };
    Console console = console(full, Screen.NONE);
    int code =
        new Clampwise(console, any -> (name, screen) -> review(name), List::of).run("review", "a");
    assertThat(code).isEqualTo(ExitCode.UNUSABLE);
    assertThat(complaint()).contains("the output could not be written");
  }
}
