package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.combination.Combination;
import clampwise.calc.statics.BeamWork;
import clampwise.calc.trail.Chain;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;
import java.util.Optional;

/**
 * How the load of a clip was got: its seam as a beam under the attachments, and under wind on the
 * bare roof if that is compared.
 *
 * @param clip number of the clip on its seam, from 0
 * @param roof the clip under the bare roof that it is held against, if it is held against one
 */
record ClipChain(ClipPath path, int clip, Optional<BareSeam> roof) implements Chain {

  @Override
  public List<Section> sections() {
    ChainWriter chain = new ChainWriter(path.plane().fields().get(0).site().measure());
    chain.section("Attachments on " + path.run().name(), this::pulls);
    chain.deciding("From " + path.run().name() + " to its clips", this::clip);
    roof.ifPresent(
        bare ->
            chain.deciding(
                "Wind on the bare roof along " + bare.run().name(), work -> bare(bare, work)));
    return chain.sections();
  }

  private void pulls(Work work) {
    Combination combination = path.plane().combinations().get(path.combination());
    int number = 0;
    for (SeamRun.Pull pull : path.pulls()) {
      number++;
      String name = pull.attachment().name();
      double pullN = pull.forces().get(path.combination()).normalN();
      Term term = Term.force("Q_" + number, "pull of " + name + ", " + combination.name(), pullN);
      work.write(Line.given(term, Source.STATICS, "see the calculation of the attachment"));
    }
  }

  private void clip(Work work) {
    pull("C", clip, BeamWork.show(path.seam(), path.loads(), "", work), work);
  }

  private static void bare(BareSeam bare, Work work) {
    pull("C_r", bare.clip(), BeamWork.show(bare.seam(), bare.loads(), "_e", work), work);
  }

  private static void pull(String symbol, int clip, Outcome<List<Term>> reactions, Work work) {
    reactions
        .result()
        .map(known -> known.get(clip))
        .ifPresent(
            reaction ->
                work.write(
                    Term.force(symbol, "pull on the clip", reaction.si()),
                    reaction.symbol(),
                    Source.STATICS,
                    reaction));
  }

  /** Chains about one clip are equal; what they would work out is not compared. */
  @Override
  public boolean equals(Object other) {
    return other instanceof ClipChain chain
        && path.subject().equals(chain.path.subject())
        && clip == chain.clip
        && roof.map(BareSeam::forceN).equals(chain.roof.map(BareSeam::forceN));
  }

  @Override
  public int hashCode() {
    return 31 * path.subject().hashCode() + clip;
  }

  @Override
  public String toString() {
    return "how the clips of " + path.run().name() + " are loaded";
  }
}
