package clampwise.cli;

import clampwise.finding.Accepted;
import clampwise.finding.Finding;
import clampwise.finding.FindingOrder;
import clampwise.finding.HouseRule;
import clampwise.gate.Acceptance;
import clampwise.gate.DeviationFiles;
import clampwise.report.ProblemLine;
import clampwise.review.Review;
import clampwise.source.Nearest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** {@code clampwise accept}: writes down that somebody answers for a finding. */
final class AcceptCommand {

  private static final int MOST_DIGITS = 6;

  private final Console console;
  private final Desk desk;

  AcceptCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  /** Reviews the job, finds what is meant, and adds it to the file beside the job. */
  int run(AcceptOptions options) {
    return OneAtATime.on(DeviationFiles.of(path(options.job())), () -> accept(options));
  }

  private static Path path(String job) {
    try {
      return Path.of(job);
    } catch (InvalidPathException e) {
      throw new UsageException(job + " is not a file name here");
    }
  }

  private int accept(AcceptOptions options) {
    LocalDate today = options.desk().today().orElseGet(LocalDate::now);
    if (options.until().isBefore(today)) {
      throw new UsageException("--until " + options.until() + " is past; today is " + today);
    }
    Review review = desk.review(options.job(), console);
    if (!review.problems().isEmpty()) {
      review.problems().forEach(each -> console.complain(each.at() + ": " + ProblemLine.of(each)));
      throw new UsageException("nothing is accepted in a job that cannot be read in full");
    }
    List<Acceptance> all = new ArrayList<>();
    for (Finding finding : meant(options, review)) {
      all.add(acceptance(finding, options, review, today));
    }
    Path file = DeviationFiles.of(Path.of(options.job()));
    write(file, all);
    all.forEach(one -> say(one, file));
    return ExitCode.CLEAR;
  }

  private static Acceptance acceptance(
      Finding finding, AcceptOptions options, Review review, LocalDate today) {
    return new Acceptance(
        finding, options.reason(), options.by(), today, options.until(), revision(options, review));
  }

  private static Optional<String> revision(AcceptOptions options, Review review) {
    if (!options.thisRevision()) {
      return Optional.empty();
    }
    if (review.revision().isEmpty()) {
      throw new UsageException("--this-revision: the job names no revision");
    }
    return Optional.of(review.revision());
  }

  /** All of them or none. */
  private static void write(Path file, List<Acceptance> all) {
    String text = existing(file);
    for (Acceptance one : all) {
      text = one.addTo(text).orElseThrow(() -> byHand(file, one));
    }
    WholeFile.write(file.toString(), text);
  }

  private static UsageException byHand(Path file, Acceptance one) {
    return new UsageException(
        file
            + " is written in a way to which nothing can be added safely; add this under accepted: "
            + one.inOneLine());
  }

  private static String existing(Path file) {
    try {
      return Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : "";
    } catch (IOException e) {
      throw new UsageException(file + " cannot be read, so nothing is added to it");
    }
  }

  private void say(Acceptance one, Path file) {
    Finding finding = one.finding();
    console.print(
        "Accepted until "
            + one.until()
            + ": "
            + finding.message()
            + "\n  "
            + finding.rule()
            + " at "
            + finding.cause()
            + "\n  written to "
            + file
            + "\n");
  }

  private static Set<Finding> meant(AcceptOptions options, Review review) {
    Set<Finding> all = new LinkedHashSet<>();
    for (String what : options.findings()) {
      all.add(meant(what, options.subject(), review));
    }
    return all;
  }

  private static Finding meant(String what, Optional<String> subject, Review review) {
    Finding finding =
        isNumber(what) ? numbered(Integer.parseInt(what), review) : ruled(what, subject, review);
    if (HouseRule.is(finding.rule())) {
      throw new UsageException(
          finding.rule()
              + " is about the house's own files and cannot be accepted: "
              + finding.remedy());
    }
    return finding;
  }

  private static boolean isNumber(String word) {
    return word.length() <= MOST_DIGITS && word.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  private static Finding numbered(int number, Review review) {
    FindingOrder order = FindingOrder.of(review.findings());
    List<Finding> leading = order.followers().leading();
    for (Finding finding : leading) {
      if (order.number(finding).filter(own -> own == number).isPresent()) {
        return finding;
      }
    }
    throw new UsageException(
        "there is no finding " + number + "; the review has " + leading.size());
  }

  /** What is open, and known debts, which somebody may answer for by name. */
  private static List<Finding> candidates(Review review) {
    List<Finding> all = new ArrayList<>(review.findings());
    for (Accepted one : review.accepted()) {
      if (one.kind() == Accepted.Kind.DEBT) {
        all.add(one.finding());
      }
    }
    return all;
  }

  private static Finding ruled(String rule, Optional<String> subject, Review review) {
    List<Finding> found = new ArrayList<>();
    List<String> rules = new ArrayList<>();
    for (Finding finding : candidates(review)) {
      rules.add(finding.rule());
      boolean fits =
          finding.rule().equals(rule)
              && subject.filter(own -> !own.equals(finding.cause().path())).isEmpty();
      if (fits) {
        found.add(finding);
      }
    }
    if (found.isEmpty()) {
      throw new UsageException(
          "nothing is found by "
              + rule
              + subject.map(s -> " at " + s).orElse("")
              + Hint.of(Nearest.to(rule, rules)));
    }
    if (found.size() > 1) {
      String subjects =
          found.stream().map(one -> "'" + one.cause() + "'").collect(Collectors.joining(", "));
      throw new UsageException(
          rule + " has " + found.size() + " findings; name one with --subject: " + subjects);
    }
    return found.get(0);
  }
}
