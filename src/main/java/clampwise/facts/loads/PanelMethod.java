package clampwise.facts.loads;

import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.Enclosure;
import clampwise.calc.wind.PanelCondition;
import clampwise.calc.wind.PanelCondition.Answer;
import clampwise.calc.wind.PanelConditions;
import clampwise.calc.wind.PanelEqualisation;
import clampwise.calc.wind.Patch;
import clampwise.calc.wind.WindCode;
import clampwise.facts.layout.PlacedModule;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The method for modules parallel to the roof, as it applies to one field. */
final class PanelMethod {

  private final WindCode code;
  private final ArraySetup setup;
  private final Measure measure;
  private final List<PanelCondition> conditions;

  PanelMethod(WindCode code, Enclosure enclosure, ArraySetup setup, Measure measure) {
    this.code = code;
    this.setup = setup;
    this.measure = measure;
    this.conditions = PanelConditions.of(code, enclosure, setup.panel(), new Work(measure));
  }

  /** Which of its conditions fail, in words; the whole module then takes what the roof would. */
  Optional<String> failed() {
    return sentences(Answer.NOT_MET);
  }

  /** What is missing to tell whether it holds, where none of its conditions fails. */
  Optional<String> unknown() {
    return failed().isPresent() ? Optional.empty() : sentences(Answer.NOT_GIVEN);
  }

  /** Pressure equalisation factor at an effective wind area; 1 where the method does not hold. */
  double equalisation(double areaM2) {
    return failed().isPresent()
        ? 1
        : PanelEqualisation.of(code, new Patch("", areaM2), new Work(measure))
            .result()
            .orElseThrow();
  }

  /** Why a module takes the edge factor, in words. */
  String exposure(PlacedModule module) {
    return setup.exposure(module, measure);
  }

  /** Least design pressure, at strength level [Pa]. */
  double leastPa() {
    return code.tables().row("least-panel-pressure").number("pressure");
  }

  private Optional<String> sentences(Answer answer) {
    String all =
        conditions.stream()
            .filter(condition -> condition.answer() == answer)
            .map(PanelCondition::sentence)
            .collect(Collectors.joining("; "));
    return all.isEmpty() ? Optional.empty() : Optional.of(all);
  }
}
