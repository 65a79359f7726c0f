package clampwise.facts.movement;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Snap;
import clampwise.calc.thermal.Movement;
import clampwise.calc.thermal.Swing;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.ExpansionTable;
import clampwise.catalogue.Fits.Need;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.JumperFits;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Bonding;
import clampwise.job.Bonding.Jumper;
import clampwise.job.BondingPart;
import clampwise.job.Named;
import clampwise.job.Quantity.Length;
import clampwise.job.Text;
import clampwise.job.Unreadable;
import clampwise.source.Span;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Holds the slack of jumpers against what the frames they join move. */
final class JumperSlacks {

  private final Layout layout;
  private final Limit factor;
  private final Answers answers;
  private final Named<BondingPart> parts;
  private final JumperPairs pairs;
  private final Unreadable unreadable;

  private JumperSlacks(Layout layout, Limits limits, Answers answers) {
    this.layout = layout;
    this.factor = limits.get("jumper-slack-factor");
    this.answers = answers;
    this.parts = layout.catalogue().with(layout.job()).parts().jumpers();
    this.unreadable = layout.job().unreadable();
    this.pairs = new JumperPairs(layout, limits, answers);
  }

  static void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Bonding> bonding = layout.job().bonding();
    if (bonding.isPresent() && !bonding.get().jumpers().isEmpty()) {
      JumperSlacks slacks = new JumperSlacks(layout, limits, answers);
      bonding.get().jumpers().forEach(jumper -> slacks.ask(jumper, bonding.get().jumper()));
    }
  }

  private void ask(Jumper jumper, Optional<Text> usual) {
    Optional<Text> name = jumper.part().or(() -> usual);
    List<JumperPair> joined = pairs.of(jumper);
    if (name.isPresent() && !joined.isEmpty()) {
      part(name.get())
          .flatMap(BondingPart::slack)
          .ifPresentOrElse(
              slack -> ask(new Use(subject(jumper), name.get(), slack), joined),
              () -> missing(subject(jumper), unslack(name.get()), name.get().at()));
    }
  }

  private String unslack(Text name) {
    return unreadable.missing(
        "the slack of jumper " + name, "parts", "jumpers", name.value(), "slack");
  }

  private Optional<BondingPart> part(Text name) {
    return parts.find(name.value());
  }

  private record Use(Subject subject, Text name, Length slack) {}

  private void ask(Use use, List<JumperPair> joined) {
    MovingPlane moving = joined.get(0).moving();
    boolean placeless = joined.stream().anyMatch(pair -> pair.joint().isPresent());
    Outcome<Swing> swing = moving.swing();
    if (moving.framesAndSheet() instanceof NotApplicable<ExpansionTable.Pair> unknown) {
      missing(use.subject(), unknown.reason(), moving.at());
    } else if (swing instanceof NotApplicable<Swing> unknown) {
      missing(use.subject(), unknown.reason(), moving.swingAt());
    } else if (placeless && moving.plane().outline().isEmpty()) {
      String reason = moving.plane().reading().outlineUnknown();
      missing(use.subject(), reason, moving.plane().plane().panel().at());
    } else {
      answers.add(fact(use, worst(joined, swing.result().orElseThrow()), joined));
    }
  }

  private record Moved(JumperPair pair, double m) {}

  private static Moved worst(List<JumperPair> joined, Swing swing) {
    ExpansionTable.Pair metals = joined.get(0).moving().framesAndSheet().result().orElseThrow();
    return joined.stream()
        .map(pair -> new Moved(pair, pair.movementM(metals, swing)))
        .max(Comparator.comparingDouble(Moved::m))
        .orElseThrow();
  }

  private JumperSlack fact(Use use, Moved moved, List<JumperPair> joined) {
    Term movement = Term.length("dL", "movement of the frames", moved.m());
    Term multiple = Term.number("c", "slack over movement", factor.si());
    double leastM = Snap.m(Movement.slack(movement, multiple, factor.source(), Work.unread()).si());
    double slackM = Snap.m(use.slack().m());
    return new JumperSlack(
        use.subject(),
        Subject.of("jumper " + use.name()).part("slack"),
        use.name().at(),
        use.slack().unit(),
        use.name().value(),
        moved.pair().left().name(),
        moved.pair().right().name(),
        moved.m(),
        slackM,
        leastM,
        Optional.of(factor),
        slackM < leastM ? Optional.of(fitting(use.name(), leastM, joined)) : Optional.empty());
  }

  /** Long enough for the widest gap of the entry. */
  private String fitting(Text name, double leastM, List<JumperPair> joined) {
    double gapM =
        joined.stream().mapToDouble(pair -> Snap.m(pair.left().gapM(pair.right()))).max().orElse(0);
    List<Need<BondingPart>> needs =
        List.of(
            new Need<>(
                "the slack", part -> part.slack().filter(m -> Snap.m(m.m()) >= leastM).isPresent()),
            new Need<>(
                "the length", part -> part.length().map(m -> Snap.m(m.m()) >= gapM).orElse(true)));
    return JumperFits.told(layout, name, needs, part -> part.slack().orElseThrow().m());
  }

  private void missing(Subject subject, String reason, Span at) {
    answers.missing(JumperSlack.class, subject, reason, at);
  }

  private static Subject subject(Jumper jumper) {
    String which =
        jumper
            .field()
            .map(field -> "jumpers of field " + field)
            .orElseGet(() -> "jumper " + end(jumper.from()) + " to " + end(jumper.to()));
    return Subject.of("bonding", which);
  }

  private static String end(Optional<Text> module) {
    return module.map(Text::value).orElse("nowhere");
  }
}
