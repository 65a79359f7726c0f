package clampwise.facts.loads;

import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Collects the sections of a chain; sections without lines are left out. */
final class ChainWriter {

  private final Measure measure;
  private final List<Section> sections = new ArrayList<>();

  ChainWriter(Measure measure) {
    this.measure = measure;
  }

  /** Adds a section with the lines that are written into its work. */
  void section(String title, Consumer<Work> lines) {
    add(title, lines, false);
  }

  /** Adds a section whose last line is one that a reader looks for first. */
  void deciding(String title, Consumer<Work> lines) {
    add(title, lines, true);
  }

  private void add(String title, Consumer<Work> lines, boolean decides) {
    Work work = new Work(measure);
    lines.accept(work);
    if (!work.lines().isEmpty()) {
      sections.add(new Section(title, measure, work.lines(), decides));
    }
  }

  List<Section> sections() {
    return List.copyOf(sections);
  }
}
