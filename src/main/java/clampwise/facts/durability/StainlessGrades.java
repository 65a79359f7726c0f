package clampwise.facts.durability;

import clampwise.calc.trail.Table;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.ModuleClamp;
import clampwise.job.Screws;
import clampwise.job.Site.Corrosivity;
import clampwise.job.SurfaceMetal;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Holds the grades of stainless screws against the air of the site. */
final class StainlessGrades {

  private final Weathering weathering;
  private final Optional<Air> air;
  private final Unsaid unsaid;
  private final Map<Text, Choice<Screws.Grade>> grades = new LinkedHashMap<>();

  StainlessGrades(Weathering weathering) {
    this.weathering = weathering;
    this.air = Air.of(weathering);
    this.unsaid = new Unsaid(weathering, "the grade of the screws of", "screws: grade");
  }

  void ask() {
    if (air.isEmpty()) {
      weathering.missing(StainlessInAir.class, subject(), Air.unknown(weathering));
      return;
    }
    for (UsedPart used : UsedPart.all(weathering)) {
      ask(used.name(), used.part().screws(), used.shelf());
    }
    for (ClampInUse used : ClampInUse.all(weathering)) {
      ask(used.name(), used.part().flatMap(ModuleClamp::screws), used.shelf());
    }
    grades.forEach((name, grade) -> weathering.add(fact(name, grade, air.orElseThrow())));
    unsaid.tell(StainlessInAir.class, subject());
  }

  private static Subject subject() {
    return Subject.of("parts");
  }

  private void ask(Text name, Optional<Screws> screws, String shelf) {
    boolean isOther =
        screws
            .flatMap(Screws::metal)
            .filter(metal -> metal.value() != SurfaceMetal.STAINLESS_STEEL)
            .isPresent();
    Optional<Choice<Screws.Grade>> grade = screws.flatMap(Screws::grade);
    if (grade.isPresent()) {
      grades.putIfAbsent(name, grade.get());
    } else if (!isOther) {
      unsaid.add(name.value(), "parts", shelf, name.value(), "screws");
    }
  }

  private StainlessInAir fact(Text name, Choice<Screws.Grade> grade, Air known) {
    Table.Row row =
        weathering.metals("stainless-grades").row("grade", grade.toString()).orElseThrow();
    Corrosivity most = Corrosivity.valueOf(row.word("class"));
    return new StainlessInAir(
        subject().part(name.value()).part("screws"),
        subject().part("screws of " + grade),
        name.at(),
        Unit.NUMBER,
        parts(grade),
        grade.toString(),
        known.word(),
        known.from(),
        known.rank(),
        Choice.word(most),
        Air.rank(most));
  }

  private String parts(Choice<Screws.Grade> grade) {
    List<String> names =
        grades.entrySet().stream()
            .filter(other -> other.getValue().value() == grade.value())
            .map(other -> other.getKey().value())
            .distinct()
            .toList();
    return Unsaid.joined(names);
  }
}
