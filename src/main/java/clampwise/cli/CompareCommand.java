package clampwise.cli;

import clampwise.finding.NaturalOrder;
import clampwise.finding.Threshold;
import clampwise.gate.Changes;
import clampwise.gate.Changes.Changed;
import clampwise.report.ChangesMarkdown;
import clampwise.report.ChangesText;
import clampwise.report.Paint;
import clampwise.report.ProblemLine;
import clampwise.report.Sheet;
import clampwise.repository.JobList;
import clampwise.repository.ListedJob;
import clampwise.review.Cautions;
import clampwise.review.Review;
import clampwise.source.SourceFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** {@code clampwise compare}: what became of jobs from one revision to another. */
final class CompareCommand {

  private final Console console;
  private final Desk desk;
  private final CompareOptions options;
  private final StringBuilder markdown = new StringBuilder();
  private final Sheet sheet;
  private int worst = ExitCode.CLEAR;

  CompareCommand(Console console, Desk desk, CompareOptions options) {
    this.console = console;
    this.desk = desk;
    this.options = options;
    boolean colours = console.screen().coloursByItself(console.environment());
    this.sheet = new Sheet(console.screen().textWidth(), colours ? new Colours() : Paint.NONE);
  }

  /** Compares both sides, job by job. */
  int run() {
    try (ComparedSide now = side(options.now(), Path.of(""));
        ComparedSide old = side(options.old(), pathOf(options.now()))) {
      compare(old, now);
    }
    if (options.markdown()) {
      console.print(markdown + Cautions.NO_APPROVAL + "\n");
    } else {
      sheet.gap();
      sheet.prose(0, clampwise.report.Role.PLAIN, Cautions.NO_APPROVAL);
      console.print(sheet.toString());
    }
    return worst;
  }

  /** What a word means; a revision alone means the other side's path as it has it. */
  private static ComparedSide side(String word, Path otherwise) {
    if (ComparedSide.isThere(word)) {
      return ComparedSide.of(Path.of(word));
    }
    int colon = word.indexOf(':');
    return colon > 0
        ? ComparedSide.fromRoot(word.substring(0, colon), word.substring(colon + 1))
        : ComparedSide.of(word, otherwise);
  }

  private static Path pathOf(String word) {
    if (ComparedSide.isThere(word)) {
      return Path.of(word);
    }
    int colon = word.indexOf(':');
    return colon > 0 ? ComparedSide.root().resolve(word.substring(colon + 1)) : Path.of("");
  }

  private void compare(ComparedSide old, ComparedSide now) {
    if (!isFolder(old) && !isFolder(now)) {
      compare(new Pair(old, old.path(), now, now.path()));
      return;
    }
    if (isFolder(old) != isFolder(now)) {
      throw new UsageException("a file is compared with a file, and a folder with a folder");
    }
    Map<String, Path> was = jobs(old);
    Map<String, Path> is = jobs(now);
    if (was.isEmpty() && is.isEmpty()) {
      throw new UsageException("there is no job in either folder");
    }
    Stream.concat(was.keySet().stream(), is.keySet().stream())
        .distinct()
        .sorted(NaturalOrder::compare)
        .forEach(name -> compare(name, old, was, now, is));
  }

  private static boolean isFolder(ComparedSide side) {
    return Files.isDirectory(side.path());
  }

  private void compare(
      String name,
      ComparedSide old,
      Map<String, Path> was,
      ComparedSide now,
      Map<String, Path> is) {
    if (!is.containsKey(name)) {
      say(name + " is gone", "");
    } else if (!was.containsKey(name)) {
      Review review = review(is.get(name), now);
      say(name + " is new", review.findings().size() + " findings; review it by itself");
      raise(review.findings().stream().anyMatch(f -> threshold(review).reachedBy(f.severity())));
    } else {
      compare(new Pair(old, was.get(name), now, is.get(name)));
    }
  }

  private void say(String title, String text) {
    if (options.markdown()) {
      markdown.append(ChangesMarkdown.note(title, text));
    } else {
      sheet.gap();
      sheet.prose(0, clampwise.report.Role.HEADING, title);
      if (!text.isEmpty()) {
        sheet.prose(2, clampwise.report.Role.PLAIN, text);
      }
    }
  }

  private static Map<String, Path> jobs(ComparedSide side) {
    Map<String, Path> jobs = new TreeMap<>();
    for (ListedJob job : JobList.of(List.of(side.path().toString()))) {
      if (job.problem().isEmpty()) {
        Path file = Path.of(job.name());
        jobs.put(SourceFiles.nameOf(relative(side.path(), file)), file);
      }
    }
    return jobs;
  }

  private static Path relative(Path folder, Path file) {
    return folder.toAbsolutePath().normalize().relativize(file.toAbsolutePath().normalize());
  }

  /** One job on both sides. */
  private record Pair(ComparedSide old, Path was, ComparedSide now, Path is) {}

  private void compare(Pair pair) {
    Review before = review(pair.was(), pair.old());
    Review after = review(pair.is(), pair.now());
    if (!before.hasJob() || !after.hasJob()) {
      return;
    }
    Changes changes = Changes.of(before, after);
    String title = pair.now().named(SourceFiles.nameOf(pair.is()));
    if (options.markdown()) {
      markdown.append(
          ChangesMarkdown.of(title, changes, text -> pair.old().named(pair.now().named(text))));
    } else {
      new ChangesText(sheet, text -> pair.old().named(pair.now().named(text)))
          .write("Changes of " + title, changes);
    }
    Threshold least = threshold(after);
    raise(
        Stream.concat(changes.fresh().stream(), changes.worse().stream())
            .anyMatch(one -> fails(one, least)));
  }

  private Threshold threshold(Review review) {
    return options.failOn().or(review::failOn).orElse(Threshold.ERROR);
  }

  private static boolean fails(Changed one, Threshold least) {
    return !one.accepted() && least.reachedBy(one.finding().severity());
  }

  private void raise(boolean fails) {
    worst = Math.max(worst, fails ? ExitCode.FINDINGS : ExitCode.CLEAR);
  }

  private Review review(Path file, ComparedSide side) {
    Review review = desk.review(file.toString(), console);
    review
        .problems()
        .forEach(one -> console.complain(side.named(one.at() + ": " + ProblemLine.of(one))));
    if (!review.problems().isEmpty()) {
      worst = ExitCode.UNUSABLE;
    }
    return review;
  }
}
