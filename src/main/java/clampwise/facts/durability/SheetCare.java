package clampwise.facts.durability;

import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Roof;
import clampwise.job.SurfaceMetal;
import clampwise.units.Unit;
import java.util.Optional;
import java.util.function.BiFunction;

/** Asks what people at work bring onto the sheets: graphite, wet mortar. */
record SheetCare(Weathering weathering, Roof roof) {

  void ask() {
    String marked = "what the roof is marked with";
    ask(roof.marking(), GraphiteMarks.class, marked, "marking", this::marks);
    String laid = "when mortar is laid near the roof";
    ask(roof.masonry(), WetMortar.class, laid, "masonry", this::mortar);
  }

  private <E extends Enum<E>> void ask(
      Optional<Choice<E>> written,
      Class<? extends Fact> type,
      String what,
      String key,
      BiFunction<PlaneLayout, SurfaceMetal, Fact> fact) {
    if (written.isEmpty()) {
      weathering.missing(type, subject(key), weathering.lacks(what, "roof", key));
      return;
    }
    Sheets sheets = new Sheets(weathering);
    for (PlaneLayout plane : sheets.underModules()) {
      if (sheets.of(plane) instanceof Result<Surface> sheet) {
        weathering.add(fact.apply(plane, sheet.value().metal()));
      } else if (sheets.of(plane) instanceof NotApplicable<Surface> unknown) {
        weathering.missing(type, Subjects.panel(plane.panelName()).part(key), unknown.reason());
      }
    }
  }

  private static Subject subject(String key) {
    return Weathering.ROOF.part(key);
  }

  private GraphiteMarks marks(PlaneLayout plane, SurfaceMetal metal) {
    Choice<Roof.Marking> marking = roof.marking().orElseThrow();
    return new GraphiteMarks(
        Subjects.panel(plane.panelName()).part("marking"),
        subject("marking"),
        marking.at(),
        Unit.NUMBER,
        plane.panelName(),
        Surface.words(metal),
        marking.toString(),
        marking.value() == Roof.Marking.GRAPHITE,
        isActive(metal) && !Sheets.isPainted(plane));
  }

  private WetMortar mortar(PlaneLayout plane, SurfaceMetal metal) {
    Choice<Roof.Masonry> masonry = roof.masonry().orElseThrow();
    return new WetMortar(
        Subjects.panel(plane.panelName()).part("masonry"),
        subject("masonry"),
        masonry.at(),
        Unit.NUMBER,
        plane.panelName(),
        Surface.words(metal),
        masonry.value() == Roof.Masonry.AFTER_ROOF,
        isActive(metal));
  }

  /** Aluminium and zinc, alone or as coatings, go in alkali and beside graphite. */
  private static boolean isActive(SurfaceMetal metal) {
    return switch (metal) {
      case ALUMINIUM, ZINC, GALVANISED_STEEL, AL_ZN_STEEL -> true;
      default -> false;
    };
  }
}
