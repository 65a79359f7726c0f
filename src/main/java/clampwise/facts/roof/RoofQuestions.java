package clampwise.facts.roof;

import clampwise.facts.Question;
import java.util.List;

/** All questions about the roof and what sits on it. */
public final class RoofQuestions {

  public static final List<Question> ALL =
      List.of(
          new SeamOffsets(),
          new AttachmentPairs(),
          new ProfileFits(),
          new SeamSizeFits(),
          new RibSizeFits(),
          new FlatBearings(),
          new SheetFits(),
          new MetalsTested(),
          new SubstratesTested(),
          new LoadsOfTests(),
          new EndDistances(),
          new LapDistances(),
          new ClipDistances(),
          new PinnedRuns(),
          new ModulesInPlane(),
          new ModuleOverlaps(),
          new ObstacleQuestion(),
          new LineSpacings(),
          new SeamSpacings(),
          new PlanSizes(),
          new ArrayHeights(),
          new ArrayTilts(),
          new ArrayEdges(),
          new GapSpacings(),
          new ZoneWidthClaims(),
          new CountClaims(),
          new ZoneCountClaims());

  private RoofQuestions() {}
}
