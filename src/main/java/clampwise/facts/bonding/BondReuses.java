package clampwise.facts.bonding;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Bonding;
import clampwise.job.BondingPart;
import clampwise.job.Flag;
import clampwise.job.ModuleClamp;
import clampwise.job.Parts;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.Optional;

/** Asks of each part that the job uses again whether it bonds a second time. */
final class BondReuses {

  private static final String KEY = "bonds-again";

  private record Used(String kind, String shelf, Optional<Flag> bonds, Optional<Flag> again) {

    static Used of(String kind, ModuleClamp clamp) {
      return new Used(kind, "mid-clamps", clamp.bonding(), clamp.bondsAgain());
    }

    static Used of(String kind, String shelf, BondingPart part) {
      return new Used(kind, shelf, part.bonding(), part.bondsAgain());
    }

    boolean isPlain() {
      return bonds.filter(flag -> !flag.value()).isPresent();
    }
  }

  private final Layout layout;
  private final Parts parts;
  private final Answers answers;

  private BondReuses(Layout layout, Answers answers) {
    this.layout = layout;
    this.parts = layout.catalogue().with(layout.job()).parts();
    this.answers = answers;
  }

  static void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Bonding> bonding = layout.job().bonding();
    if (bonding.isPresent() && !bonding.get().reused().isEmpty()) {
      BondReuses reuses = new BondReuses(layout, answers);
      for (Text name : bonding.get().reused()) {
        reuses.find(name.value()).ifPresent(used -> reuses.judge(name, used));
      }
    }
  }

  private Optional<Used> find(String name) {
    Optional<Used> clamp =
        parts.midClamps().find(name).map(part -> Used.of(BondParts.MID_CLAMP, part));
    Optional<Used> jumper =
        parts.jumpers().find(name).map(part -> Used.of(BondParts.JUMPER, "jumpers", part));
    return clamp
        .or(() -> jumper)
        .or(() -> parts.lugs().find(name).map(part -> Used.of(BondParts.LUG, "lugs", part)));
  }

  /** A plain part bonds neither now nor later, which is a finding of its own. */
  private void judge(Text name, Used used) {
    if (used.isPlain()) {
      return;
    }
    Subject subject = Subject.of("bonding", "reused " + used.kind() + " " + name);
    used.again()
        .ifPresentOrElse(
            again ->
                answers.add(
                    new BondReuse(
                        subject, name.at(), Unit.NUMBER, used.kind(), name.value(), again.value())),
            () -> answers.missing(BondReuse.class, subject, unsaid(name, used), name.at()));
  }

  private String unsaid(Text name, Used used) {
    return layout
        .job()
        .unreadable()
        .missing(
            "whether " + used.kind() + " " + name + " bonds again once it was loosened",
            "parts",
            used.shelf(),
            name.value(),
            KEY);
  }
}
