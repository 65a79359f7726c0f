package clampwise.calc.thermal;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/** What a movement asks of joints, clips and cables. */
public final class Movement {

  private Movement() {}

  /**
   * Share of a movement that each of several equal joints takes, ΔL/n.
   *
   * <p>Common practice: joints are alike and share evenly.
   *
   * @param movement the whole movement
   * @param joints number of joints
   * @return movement of a joint
   */
  public static Term perJoint(Term movement, int joints, Work work) {
    Term each = Term.length("dj", "movement of each joint", movement.si() / joints);
    work.write(
        each,
        movement.symbol() + "/n",
        Source.of("practice", "joints share evenly", "common practice, no source"),
        movement,
        Term.number("n", "joints", joints));
    return each;
  }

  /**
   * A movement over the travel that is free for it; above 1 it binds.
   *
   * @param movement the movement
   * @param free free travel: slack of a joint, travel of a clip
   */
  public static Term share(Term movement, Term free, Work work) {
    Term share = Term.number("U", "share of the free travel", movement.si() / free.si());
    String formula = movement.symbol() + "/" + free.symbol();
    String note = share.si() > 1 ? "More than the free travel." : "";
    work.write(new Line(share, formula, List.of(movement, free), Source.STATICS, note));
    return share;
  }

  /**
   * Slack of a conductor or conduit loop over a break, a multiple of the movement.
   *
   * @param factor multiple that practice asks for, with its source
   */
  public static Term slack(Term movement, Term factor, Source source, Work work) {
    Term slack = Term.length("s", "slack of the loop", factor.si() * movement.si());
    work.write(slack, factor.symbol() + "*" + movement.symbol(), source, factor, movement);
    return slack;
  }
}
