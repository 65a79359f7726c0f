package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.statics.Beam;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.job.Panel;
import clampwise.job.Quantity.Length;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Follows the uplift of the attachments along their seams to the clips: each seam is a continuous
 * beam over the clip lines, from one end of its panels to the other.
 */
final class ClipLoads {

  private final PlaneLoads plane;
  private final Panel panel;
  private final Answers answers;
  private final Optional<Outcome<Double>> strengthN;
  private final List<ClipShare> shares = new ArrayList<>();

  private ClipLoads(PlaneLoads plane, Panel panel, Answers answers) {
    this.plane = plane;
    this.panel = panel;
    this.answers = answers;
    this.strengthN =
        panel
            .clipStrength()
            .filter(written -> !plane.fields().isEmpty())
            .map(written -> PanelStrength.of(written, clips(), plane.standard()));
  }

  static void ask(PlaneLoads plane, Answers answers) {
    plane.onClips().ifPresent(panel -> new ClipLoads(plane, panel, answers).ask());
  }

  private void ask() {
    Optional<String> unknown = unknown();
    if (unknown.isPresent()) {
      missing(ClipUse.class, subject(), unknown.get());
      missing(ClipShare.class, subject(), unknown.get());
    } else {
      strengthMissing().ifPresent(reason -> missing(ClipUse.class, subject(), reason));
      ClipPaths paths = new ClipPaths(plane, pitchM());
      SeamRun.of(plane, plane.plane().endLapsM()).forEach(run -> ask(run, paths));
      addShares();
    }
  }

  private Optional<String> unknown() {
    if (plane.upliftUnknown().isPresent()) {
      return plane.upliftUnknown();
    }
    if (plane.plane().reading().areEndLapsLost()) {
      return Optional.of(plane.plane().reading().endLapsUnknown());
    }
    if (plane.plane().supports().isEmpty()) {
      return Optional.of(
          plane
              .job()
              .unreadable()
              .missing(
                  "where the clip lines of plane " + plane.plane().name() + " lie",
                  "planes",
                  plane.plane().name(),
                  "purlins"));
    }
    return panel.pitch().isEmpty()
        ? Optional.of(plane.ofPanel("the pitch of " + plane.covering(), "pitch"))
        : Optional.empty();
  }

  private boolean isStrengthLost() {
    return plane.isPanelKeyLost("clip-strength");
  }

  private Optional<String> strengthMissing() {
    if (isStrengthLost()) {
      return Optional.of("what " + clips() + " may take could not be read");
    }
    if (strengthN.isEmpty()) {
      return Optional.of("what " + clips() + " may take is not given (clip-strength)");
    }
    return strengthN.get() instanceof NotApplicable<Double> none
        ? Optional.of(none.reason())
        : Optional.empty();
  }

  private void ask(SeamRun run, ClipPaths paths) {
    double[] clipsM = run.supportsM(plane.plane().supports());
    Subject subject = plane.subject().part(run.name());
    if (clipsM.length < ClipPaths.LEAST_CLIPS) {
      String reason = run.name() + " lies on fewer than two clip lines";
      missing(ClipUse.class, subject, reason);
      missing(ClipShare.class, subject, reason);
      return;
    }
    Beam seam = new Beam(run.fromM(), run.toM(), clipsM);
    Outcome<ClipPath> path = run.pulls().then(pulls -> paths.of(run, seam, pulls));
    if (path instanceof Result<ClipPath> known) {
      answer(known.value(), paths);
    } else if (path instanceof NotApplicable<ClipPath> none) {
      missing(ClipUse.class, subject, none.reason());
      missing(ClipShare.class, subject, none.reason());
    }
  }

  /** Where nobody says what a clip takes, the bare roof says what the clips were laid for. */
  private void answer(ClipPath path, ClipPaths paths) {
    Outcome<ClipPath.Bare> bare = paths.roof(path).then(path::bare);
    Optional<Double> strong = strengthN.flatMap(Outcome::result);
    if (strong.isPresent()) {
      answers.add(path.use(strong.get(), bare));
    } else if (isStrengthLost()) {
      missing(ClipShare.class, path.subject(), "what " + clips() + " may take could not be read");
    } else {
      Outcome<ClipShare> share =
          bare.then(
              own ->
                  paths
                      .mostOfPlane(path.combination())
                      .then(most -> new Result<>(path.share(own, most))));
      share.result().ifPresent(shares::add);
      if (share instanceof NotApplicable<ClipShare> none) {
        missing(ClipShare.class, path.subject(), none.reason());
      }
    }
  }

  /** Where a clip of a field gets too much, the lesser ones are the same mistake. */
  private void addShares() {
    Set<Subject> worse =
        shares.stream()
            .filter(ClipShare::isAboveAll)
            .map(ClipShare::cause)
            .collect(Collectors.toSet());
    shares.stream()
        .map(share -> worse.contains(share.cause()) ? share.besideWorse() : share)
        .forEach(answers::add);
  }

  private double pitchM() {
    return panel.pitch().map(Length::m).orElseThrow();
  }

  private String clips() {
    return "the clips of " + plane.covering();
  }

  private Subject subject() {
    return plane.subject().part("clips");
  }

  private void missing(Class<? extends Fact> question, Subject subject, String reason) {
    Span at = plane.upliftUnknown().isPresent() ? plane.fieldsAt() : plane.panelAt();
    answers.missing(question, subject, reason, at);
  }
}
