package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.combination.Combination;
import clampwise.calc.statics.BeamLoad;
import clampwise.calc.statics.BeamWork;
import clampwise.calc.trail.Chain;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/**
 * How the load of a clip was got: its seam as a beam under the attachments, and under wind on the
 * bare roof if that is compared.
 *
 * @param clip number of the clip on its seam, from 0
 * @param roof loads of the bare roof; empty if they are not compared
 * @param roofClip number of the clip that the bare roof loads most in the same zone, from 0
 */
record ClipChain(ClipPath path, int clip, List<BeamLoad> roof, int roofClip) implements Chain {

  @Override
  public List<Section> sections() {
    ChainWriter chain = new ChainWriter(path.plane().fields().get(0).site().measure());
    chain.section("Attachments on " + path.run().name(), this::pulls);
    chain.deciding("From " + path.run().name() + " to its clips", this::clip);
    if (!roof.isEmpty()) {
      chain.deciding("Wind on the bare roof along " + path.run().name(), this::bare);
    }
    return chain.sections();
  }

  private void pulls(Work work) {
    Combination combination = path.plane().combinations().get(path.combination());
    for (SeamRun.Pull pull : path.pulls()) {
      String name = pull.attachment().name();
      double pullN = pull.forces().get(path.combination()).normalN();
      Term term = Term.force("P", "pull of " + name + ", " + combination.name(), pullN);
      work.write(Line.given(term, Source.STATICS, "see the calculation of the attachment"));
    }
  }

  private void clip(Work work) {
    most(path.loads(), "", "C", clip, work);
  }

  private void bare(Work work) {
    most(roof, "_e", "C_r", roofClip, work);
  }

  private void most(List<BeamLoad> loads, String mark, String symbol, int number, Work work) {
    Outcome<List<Term>> reactions = BeamWork.show(path.seam(), loads, mark, work);
    if (reactions instanceof Outcome.Result<List<Term>> known) {
      Term reaction = known.value().get(number);
      Term pull = Term.force(symbol, "pull on the clip", reaction.si());
      work.write(pull, reaction.symbol(), Source.STATICS, reaction);
    }
  }

  /** Chains about one clip are equal; what they would work out is not compared. */
  @Override
  public boolean equals(Object other) {
    return other instanceof ClipChain chain
        && path.subject().equals(chain.path.subject())
        && clip == chain.clip
        && roofClip == chain.roofClip
        && roof.isEmpty() == chain.roof.isEmpty();
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
