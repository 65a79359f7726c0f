package clampwise.facts.weight;

import clampwise.facts.Question;
import java.util.List;

/** All questions about weight, and about the roof under it. */
public final class WeightQuestions {

  public static final List<Question> ALL =
      List.of(
          WeighedField.each(ArrayLoads::ask),
          WeighedField.each(MemberIncreases::ask),
          LateralIncreases::ask,
          WeighedField.each(LiveLoadsUnder::ask),
          WeighedField.each(AttachmentCounts::ask),
          ExpeditedPath.each(ExpeditedLoads::ask),
          ExpeditedPath.each(ExpeditedAttachments::ask),
          ExpeditedPath.each(ExpeditedSpacings::ask),
          ExpeditedPath.each(ExpeditedGaps::ask),
          RoofCoverages::ask,
          WalkTests::ask,
          SnowRetentions::ask);

  private WeightQuestions() {}
}
