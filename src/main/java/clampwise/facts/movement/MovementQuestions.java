package clampwise.facts.movement;

import clampwise.facts.Question;
import java.util.List;

/** All questions about movement with temperature. */
public final class MovementQuestions {

  public static final List<Question> ALL =
      List.of(
          MovingPlane.each(PanelTravels::ask),
          MovingPlane.each(ThroughFastenedRuns::ask),
          MovingPlane.each(ModuleRuns::ask),
          MovingPlane.each(FrameJoints::ask),
          MovingPlane.each(JointCrossings::ask),
          JumperSlacks::ask);

  private MovementQuestions() {}
}
