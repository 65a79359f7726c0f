package clampwise.gate;

import clampwise.finding.Accepted;
import clampwise.finding.Finding;
import clampwise.finding.FindingName;
import clampwise.finding.HouseRule;
import clampwise.finding.HouseRule.Words;
import clampwise.gate.DeviationFile.Deviation;
import clampwise.job.Text;
import clampwise.source.Span;
import java.time.LocalDate;
import java.util.Optional;

/** A deviation that somebody accepted, for a time and to an extent. */
record DeviationAnswer(Deviation written) implements Answer {

  static final String KIND = "accepted deviations";

  @Override
  public FindingName name() {
    return Answer.name(written.rule(), written.subject(), written.loadCase());
  }

  @Override
  public Span at() {
    return written.rule().at();
  }

  @Override
  public Accepted accept(Finding finding) {
    return new Accepted(
        finding,
        Accepted.Kind.DEVIATION,
        written.reason().value(),
        written.by().value(),
        written.until().toString(),
        at());
  }

  @Override
  public Optional<Fault> fault(Finding finding, String revision, LocalDate today) {
    // East of this machine it may be tomorrow already.
    if (today.plusDays(1).isBefore(written.on().date())) {
      return Optional.of(notYet(today));
    }
    if (today.isAfter(written.until().date())) {
      return Optional.of(expired(today));
    }
    Optional<Text> other = written.revision().filter(own -> !own.value().equals(revision));
    return other.isPresent() ? Optional.of(other(other.get(), revision)) : outgrown(finding);
  }

  private Fault expired(LocalDate today) {
    String message =
        "accepted by "
            + written.by()
            + " until "
            + written.until()
            + ": "
            + written.reason()
            + "; today is "
            + today;
    return new Fault(HouseRule.DEVIATION_EXPIRED, new Words(message, CORRECT));
  }

  private static final String CORRECT =
      "correct the layout, or have whoever answers for it accept it anew with a later day";

  private Fault notYet(LocalDate today) {
    String message = "accepted on " + written.on() + "; today is " + today;
    String remedy = "set the clock of this machine, or correct the date";
    return new Fault(HouseRule.DEVIATION_NOT_YET, new Words(message, remedy));
  }

  private static Fault other(Text own, String revision) {
    String now = revision.isEmpty() ? "the job names no revision" : "the job is at " + revision;
    String message = "accepted for revision " + own + "; " + now;
    return new Fault(HouseRule.DEVIATION_OF_OTHER_REVISION, new Words(message, CORRECT));
  }

  private Optional<Fault> outgrown(Finding finding) {
    return new Extent(written.value(), written.places())
        .exceededBy(finding)
        .map(how -> "accepted by " + written.by() + " for " + finding.title() + ", but " + how)
        .map(message -> new Fault(HouseRule.DEVIATION_OUTGROWN, new Words(message, CORRECT)));
  }

  @Override
  public Finding idle() {
    String message =
        "nothing is found by "
            + written.rule()
            + " at "
            + written.subject()
            + inLoadCase()
            + " any more";
    String remedy = "take it out, or correct its rule, subject or load case";
    return HouseRule.DEVIATION_UNUSED.found(subject(KIND), at(), new Words(message, remedy));
  }

  private String inLoadCase() {
    return written.loadCase().map(load -> " under " + load).orElse("");
  }
}
