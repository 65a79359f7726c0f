package clampwise.facts.bonding;

import clampwise.calc.Snap;
import clampwise.catalogue.Fits.Need;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.JumperFits;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Bonding;
import clampwise.job.Bonding.Jumper;
import clampwise.job.BondingPart;
import clampwise.job.Quantity.Length;
import clampwise.job.Text;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Asks of each entry of the jumpers whether it reaches from frame to frame. */
final class JumperReaches {

  private record Gap(Joint joint, double m) {}

  private final Layout layout;
  private final BondParts parts;
  private final Joints joints;
  private final Reach reach;
  private final Answers answers;

  private JumperReaches(Layout layout, Bonding bonding, Answers answers) {
    this.layout = layout;
    this.parts = BondParts.of(layout, bonding);
    this.joints = new Joints(new Frames(layout), parts);
    this.reach = new Reach(layout, parts);
    this.answers = answers;
  }

  static void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Bonding> bonding = layout.job().bonding();
    if (bonding.isPresent() && !bonding.get().jumpers().isEmpty()) {
      JumperReaches reaches = new JumperReaches(layout, bonding.get(), answers);
      bonding.get().jumpers().forEach(jumper -> reaches.ask(jumper, bonding.get()));
    }
  }

  private void ask(Jumper jumper, Bonding bonding) {
    Optional<Text> name = jumper.part().or(bonding::jumper);
    List<Gap> gaps =
        joints
            .tied(jumper)
            .flatMap(joint -> reach.gapM(joint).stream().mapToObj(m -> new Gap(joint, m)))
            .toList();
    if (name.isPresent() && !gaps.isEmpty()) {
      parts
          .lengthOf(jumper)
          .ifPresentOrElse(
              length -> answers.add(fact(jumper, name.get(), length, gaps)),
              () -> missing(jumper, name.get()));
    }
  }

  private void missing(Jumper jumper, Text name) {
    String reason =
        parts
            .unreadable()
            .missing("the length of jumper " + name, "parts", "jumpers", name.value(), "length");
    answers.missing(JumperReach.class, subject(jumper), reason, name.at());
  }

  private JumperReach fact(Jumper jumper, Text name, Length length, List<Gap> gaps) {
    double lengthM = Snap.m(length.m());
    long tooFar = gaps.stream().filter(gap -> gap.m() > lengthM).count();
    Gap worst = gaps.stream().max(Comparator.comparingDouble(Gap::m)).orElseThrow();
    return new JumperReach(
        subject(jumper),
        parts.placeOf(jumper),
        length.unit(),
        name.value(),
        worst.joint().one().name(),
        worst.joint().other().name(),
        lengthM,
        worst.m(),
        tooFar > 1 ? "; of the " + gaps.size() + " drawn here, " + tooFar + " do not reach" : "",
        tooFar > 0 ? remedy(name, worst.m()) : "");
  }

  private String remedy(Text name, double gapM) {
    Need<BondingPart> reaches =
        new Need<>(
            "the length", part -> part.length().filter(m -> Snap.m(m.m()) >= gapM).isPresent());
    return "use "
        + JumperFits.told(layout, name, List.of(reaches), part -> part.length().orElseThrow().m())
        + ", or take it out and give the frames on both sides a grounding lug each";
  }

  private static Subject subject(Jumper jumper) {
    return Subject.of("bonding", BondParts.word(jumper));
  }
}
