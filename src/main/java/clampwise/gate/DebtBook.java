package clampwise.gate;

import clampwise.finding.Finding;
import clampwise.finding.FindingName;
import clampwise.finding.HouseRule;
import clampwise.finding.NaturalOrder;
import clampwise.job.Count;
import clampwise.job.Text;
import clampwise.review.Review;
import clampwise.source.Problem;
import clampwise.source.SourceFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The record of known debts while it is written: solved debts leave it, and what is new enters it
 * only where that was asked for.
 */
public final class DebtBook {

  private static final String HEAD =
      """
      # Findings that stood in these jobs when clampwise was adopted. They are shown in every report and
      # fail no run until they get worse; see docs/gate.md. Written by clampwise record.
      """;

  private static final Comparator<FindingName> BY_NAME =
      Comparator.comparing(FindingName::rule)
          .thenComparing(FindingName::cause)
          .thenComparing(FindingName::loadCase);

  private final Path folder;
  private final boolean adds;
  private final LocalDate recorded;
  private final List<Problem> problems;
  private final Map<String, Map<FindingName, Extent>> byJob = new TreeMap<>(NaturalOrder::compare);
  private int added;
  private int solved;
  private int left;

  private DebtBook(Path path, boolean adds, LocalDate today) {
    DebtRecord record = DebtRecord.read(path);
    Optional<DebtFile> existing = record.file().content();
    Path absolute = path.toAbsolutePath().normalize();
    this.folder = Objects.requireNonNullElse(absolute.getParent(), absolute);
    this.adds = adds || existing.isEmpty();
    this.recorded = existing.map(file -> file.recorded().date()).orElse(today);
    this.problems = record.file().problems();
    existing.ifPresent(file -> file.debts().forEach(this::take));
  }

  /**
   * Opens a record.
   *
   * @param path the file; a new record is begun where there is none
   * @param adds whether what is new enters a record that exists
   */
  public static DebtBook open(Path path, boolean adds, LocalDate today) {
    return new DebtBook(path, adds, today);
  }

  /**
   * Where the record of a job stands, or where one would be begun: at the root of its repository.
   */
  public static Path placeFor(Path job) {
    return DebtRecord.find(job).orElseGet(() -> root(job).resolve(DebtRecord.FILE));
  }

  private static Path root(Path job) {
    Path start = job.toAbsolutePath().normalize();
    for (Path at = start; at != null; at = at.getParent()) {
      if (Files.exists(at.resolve(".git"))) {
        return at;
      }
    }
    return Path.of("").toAbsolutePath();
  }

  private void take(DebtFile.Debt debt) {
    FindingName name = Answer.name(debt.rule(), debt.subject(), debt.loadCase());
    of(debt.job().value()).put(name, new Extent(debt.value(), debt.places()));
  }

  private Map<FindingName, Extent> of(String job) {
    return byJob.computeIfAbsent(job, unseen -> new TreeMap<>(BY_NAME));
  }

  /** What could not be read of the record as it was; such a record is not written over. */
  public List<Problem> problems() {
    return problems;
  }

  /**
   * Brings the record up to date with the review of a job in which only accepted deviations are
   * told apart. A job that could not be read keeps what is recorded.
   */
  public void settle(Path job, Review review) {
    String name = SourceFiles.nameOf(folder.relativize(job.toAbsolutePath().normalize()));
    if (review.problems().isEmpty()) {
      settle(of(name), review);
    }
  }

  private void settle(Map<FindingName, Extent> known, Review review) {
    Map<FindingName, Finding> found = new TreeMap<>(BY_NAME);
    for (Finding finding : review.findings()) {
      if (!HouseRule.is(finding.rule())) {
        found.put(finding.name(), finding);
      }
    }
    int before = known.size();
    known.keySet().removeIf(name -> !found.containsKey(name) && Gaps.wouldShow(name, review));
    solved += before - known.size();
    for (Finding finding : found.values()) {
      settle(known, finding);
    }
  }

  private void settle(Map<FindingName, Extent> known, Finding finding) {
    Extent extent = known.get(finding.name());
    if (extent == null && !adds) {
      left++;
    } else if (extent == null) {
      added++;
      known.put(finding.name(), Extent.of(finding));
    } else if (adds || extent.exceededBy(finding).isEmpty()) {
      known.put(finding.name(), Extent.of(finding));
    }
  }

  /** Forgets jobs that are not there any more. */
  public void forgetLostJobs() {
    byJob
        .entrySet()
        .removeIf(
            job -> {
              boolean lost = !Files.exists(folder.resolve(job.getKey()));
              solved += lost ? job.getValue().size() : 0;
              return lost;
            });
  }

  /** What happened, in words. */
  public String summary() {
    int all = byJob.values().stream().mapToInt(Map::size).sum();
    String fresh = left == 0 ? "" : "; " + left + " new not recorded (--add records what is new)";
    return all + " known, " + added + " of them new, " + solved + " solved" + fresh;
  }

  /** The record as it is written. */
  public String text() {
    StringBuilder text = new StringBuilder(HEAD);
    text.append("recorded: ").append(recorded).append('\n');
    text.append(byJob.values().stream().allMatch(Map::isEmpty) ? "" : "debts:\n");
    byJob.forEach((job, debts) -> debts.forEach((name, extent) -> line(text, job, name, extent)));
    return text.toString();
  }

  private static void line(StringBuilder text, String job, FindingName name, Extent extent) {
    text.append("  - {job: ").append(YamlText.of(job));
    text.append(", rule: ").append(YamlText.of(name.rule()));
    text.append(", subject: ").append(YamlText.of(name.cause().path()));
    if (!name.loadCase().isEmpty()) {
      text.append(", load-case: ").append(YamlText.of(name.loadCase()));
    }
    extent.value().map(Text::value).map(YamlText::of).ifPresent(v -> text.append(", value: " + v));
    extent.places().map(Count::value).ifPresent(count -> text.append(", places: " + count));
    text.append("}\n");
  }
}
