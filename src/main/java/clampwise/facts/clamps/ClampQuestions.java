package clampwise.facts.clamps;

import clampwise.facts.Question;
import java.util.List;

/** All questions about clamps and module edges. */
public final class ClampQuestions {

  public static final List<Question> ALL =
      List.of(
          FieldCase.each(FrameFits::ask),
          FieldCase.each(SharedMidClamps::ask),
          FieldCase.each(ModuleHolds::ask),
          FieldCase.each(RowPhases::ask),
          FieldCase.each(SideRatings::ask),
          FieldCase.each(ListedParts::ask),
          ModuleGaps::ask,
          FieldCase.each(RowGaps::ask),
          FieldCase.each(WrittenAttachments::ask),
          FieldCase.each(ClampGrips::ask),
          FieldCase.each(EndBearings::ask),
          FieldCase.each(ContinuityClaims::ask));

  private ClampQuestions() {}
}
