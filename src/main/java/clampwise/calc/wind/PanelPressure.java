package clampwise.calc.wind;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.PanelCondition.Answer;
import java.util.List;
import java.util.stream.Collectors;

/** Design pressures on a panel that lies parallel to its roof. */
public final class PanelPressure {

  private PanelPressure() {}

  /**
   * A panel on a roof.
   *
   * @param patch zone and effective wind area
   * @param edgeFactor array edge factor for uplift, see {@link ExposedEdge}
   * @param setup how its array lies on the roof
   */
  public record Panel(Patch patch, double edgeFactor, PanelSetup setup) {}

  /**
   * The pressures on a panel, and by which method.
   *
   * @param reduced whether the method for panels parallel to the roof was used; otherwise roof
   *     components and cladding act on the whole panel
   * @param conditions each condition of the method with its answer
   */
  public record PanelLoad(Pressures pressures, boolean reduced, List<PanelCondition> conditions) {

    public PanelLoad {
      conditions = List.copyOf(conditions);
    }
  }

  /**
   * Design pressures of a panel by ASCE 7, 29.4.4, if all its conditions are met; where one fails
   * there is no credit and roof components and cladding (Eq. 30.3-1, with internal pressure, the
   * severe side) act on the whole panel. A condition that is not known makes no pressure. Strength
   * level.
   *
   * @param velocity velocity pressure at height h [Pa]
   * @return the pressures [Pa] with the answers to all conditions, or why there are none
   */
  public static Outcome<PanelLoad> of(
      WindCode code, WindBuilding building, Velocity velocity, Panel panel, Work work) {
    List<PanelCondition> conditions =
        PanelConditions.of(code, building.enclosure(), panel.setup(), work);
    String failed = sentences(conditions, Answer.NOT_MET);
    if (!failed.isEmpty()) {
      credit(code, 0, "no credit, roof components and cladding on the panel: " + failed, work);
      return ZonePressure.of(code, building, velocity, panel.patch(), work)
          .then(pressures -> new Result<>(new PanelLoad(pressures, false, conditions)));
    }
    String unknown = sentences(conditions, Answer.NOT_GIVEN);
    if (!unknown.isEmpty()) {
      return new NotApplicable<>(unknown);
    }
    credit(code, 1, "all conditions of the method are met", work);
    return reduced(code, building, velocity, panel, work)
        .then(pressures -> new Result<>(new PanelLoad(pressures, true, conditions)));
  }

  private static String sentences(List<PanelCondition> conditions, Answer answer) {
    return conditions.stream()
        .filter(condition -> condition.answer() == answer)
        .map(PanelCondition::sentence)
        .collect(Collectors.joining("; "));
  }

  private static void credit(WindCode code, double credit, String why, Work work) {
    Source source = code.clause("29.4.4");
    Term term = Term.number("credit", "method for panels parallel to the roof: 1 used", credit);
    work.write(Line.given(term, source, why));
  }

  private static Outcome<Pressures> reduced(
      WindCode code, WindBuilding building, Velocity velocity, Panel panel, Work work) {
    return ExternalCoefficient.of(code, building, panel.patch(), work)
        .then(
            external ->
                PanelEqualisation.of(code, panel.patch(), work)
                    .then(
                        equalisation -> {
                          PanelFactors factors = new PanelFactors(panel.edgeFactor(), equalisation);
                          return new Result<>(
                              PanelEquation.of(code, velocity, external, factors, work));
                        }));
  }
}
