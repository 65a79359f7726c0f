package clampwise.rulebook;

import clampwise.facts.Fact;
import clampwise.facts.Facts;
import clampwise.review.Reviewer;
import clampwise.rulebook.FactSheet.Kind;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The side of clampwise in {@code bench/against-generic}: writes the facts of the examples as
 * sheets, or judges sheets by the shipped rules and says how long that takes when warm.
 */
final class AgainstGeneric {
  private static final OperatingSystemMXBean PROCESS =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  /**
   * The system counts processor time in hundredths of a second, so that fast work is done often.
   */
  private static final int JUDGING = 20;

  private final Rulebook rulebook = Rulebook.builtIn();
  private final Set<String> ids;
  private final Map<String, Kind> kinds = new TreeMap<>();
  private long found;

  private AgainstGeneric(Set<String> ids) {
    this.ids = ids;
    for (OneFactRule rule : rulebook.rules().single()) {
      if (ids.contains(rule.rule())) {
        kinds.put(rule.type().getSimpleName(), new Kind(rule.type()));
      }
    }
  }

  /** {@code write RULES SCHEMA FOLDER} or {@code judge RULES FOLDER VERDICTS ROUNDS}. */
  public static void main(String[] words) throws IOException {
    AgainstGeneric bench = new AgainstGeneric(new TreeSet<>(Arrays.asList(words[1].split(","))));
    if (words[0].equals("write")) {
      bench.write(Path.of(words[2]), Path.of(words[3]));
    } else {
      bench.judge(Path.of(words[2]), Path.of(words[3]), Integer.parseInt(words[4]));
    }
  }

  private void write(Path schema, Path folder) throws IOException {
    SheetWriter writer = new SheetWriter(kinds);
    Files.writeString(schema, writer.schema());
    Reviewer reviewer = new Reviewer();
    try (Stream<Path> examples = Files.list(Path.of("examples"))) {
      for (Path example : examples.sorted().toList()) {
        Path job = example.resolve("job.yaml");
        if (Files.exists(job)) {
          String name = example.getFileName().toString();
          List<Fact> facts = reviewer.review(job).facts().map(Facts::facts).orElse(List.of());
          Files.writeString(folder.resolve(name + ".yaml"), writer.plain(facts));
          Files.writeString(folder.resolve(name + "-disturbed.yaml"), writer.disturbed(facts));
          Files.writeString(folder.resolve(name + "-broken.yaml"), writer.broken(facts));
        }
      }
    }
  }

  private record Sheet(String name, String text, FactSheet parsed) {}

  private void judge(Path folder, Path verdicts, int rounds) throws IOException {
    List<Sheet> sheets = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        String text = Files.readString(file);
        Sheet sheet = new Sheet(name, text, FactSheet.read(name, text, kinds));
        sheets.add(sheet);
        sheet.parsed().faults().forEach(path -> lines.add(name + " schema " + path));
        verdict(sheet.parsed()).forEach(one -> lines.add(name + " " + one));
      }
    }
    Collections.sort(lines);
    Files.writeString(verdicts, String.join("\n", lines) + "\n");
    print("judge", JUDGING * rounds, () -> sheets.forEach(sheet -> count(sheet.parsed())));
    print("whole", rounds, () -> sheets.forEach(this::whole));
    print("parse", rounds, () -> sheets.forEach(AgainstGeneric::parse));
    if (found == 0) {
      throw new AssertionError("nothing was found");
    }
  }

  private void whole(Sheet sheet) {
    count(FactSheet.read(sheet.name(), sheet.text(), kinds));
  }

  private static void parse(Sheet sheet) {
    YamlReader.read(sheet.name(), sheet.text(), new Problems()).orElseThrow();
  }

  private void count(FactSheet sheet) {
    found += verdict(sheet).size();
  }

  /** Every rule that a subject breaks, as the other side says it. */
  private List<String> verdict(FactSheet sheet) {
    List<String> verdict = new ArrayList<>();
    Report report = rulebook.ask(sheet.facts());
    for (String id : ids) {
      for (Fact fact : report.facts(id)) {
        verdict.add(id + " " + fact.subject().path());
      }
    }
    return verdict;
  }

  /** The processor time of a round of the whole process, after as many rounds of warming up. */
  private static void print(String name, int rounds, Runnable work) {
    for (int i = 0; i < rounds; i++) {
      work.run();
    }
    long start = PROCESS.getProcessCpuTime();
    for (int i = 0; i < rounds; i++) {
      work.run();
    }
    double ms = (PROCESS.getProcessCpuTime() - start) / 1e6 / rounds;
    System.out.printf(java.util.Locale.ROOT, "%s %.3f%n", name, ms);
  }
}
