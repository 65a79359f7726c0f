package clampwise.facts.electrical;

import clampwise.calc.trail.Chain;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Work;
import java.util.List;
import java.util.Optional;

/** A short calculation whose lines are kept with its fact. */
record ShownWork(List<Section> sections) implements Chain {

  static Optional<Chain> of(String title, Work work) {
    return Optional.of(
        new ShownWork(List.of(new Section(title, work.measure(), work.lines(), true))));
  }
}
