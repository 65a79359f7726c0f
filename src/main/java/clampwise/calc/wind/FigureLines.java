package clampwise.calc.wind;

import clampwise.calc.AsceEdition;
import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.WindChoices.HipCurve;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads the lines of one figure, or of two between which a roof lies, as shown work. */
final class FigureLines {

  private static final String OPEN_HIP = "30.3-2F";
  private static final String POSITIVE = "positive";

  private final WindCode code;
  private final Blend blend;
  private final Work work;

  FigureLines(WindCode code, Blend blend, Work work) {
    this.code = code;
    this.blend = blend;
    this.work = work;
  }

  /** The coefficient of a row of the figure: a zone's, or the positive one of all zones. */
  Outcome<Double> of(String row, Patch patch, Term named) {
    Term term = named(named, row);
    if (blend.isAlone()) {
      return read(blend.low(), row, patch, term);
    }
    return read(blend.low(), row, patch, Term.number("G_1", "in the first figure", 0))
        .then(
            low ->
                read(blend.high(), row, patch, Term.number("G_2", "in the second figure", 0))
                    .then(high -> new Result<>(between(low, high, term))));
  }

  private static Term named(Term term, String row) {
    String meaning = row.equals(POSITIVE) ? term.meaning() : term.meaning() + ", zone " + row;
    return Term.number(term.symbol(), meaning, 0);
  }

  private double between(double low, double high, Term term) {
    List<Term> inputs = new ArrayList<>();
    inputs.add(Term.number("G_1", "in the first figure", low));
    inputs.add(Term.number("G_2", "in the second figure", high));
    inputs.addAll(blend.run());
    double value = low + (high - low) * blend.share();
    String formula = "G_1 + (G_2 - G_1) * (x - x_1) / (x_2 - x_1)";
    return work.write(new Line(valued(term, value), formula, inputs, blend.source(), ""));
  }

  private Outcome<Double> read(String figure, String row, Patch patch, Term term) {
    Table table = code.table(key(figure));
    Optional<Table.Row> found = table.row("zone", row);
    if (found.isEmpty()) {
      return new NotApplicable<>(
          "figure "
              + figure
              + " of ASCE "
              + code.edition().label()
              + " has no zone "
              + row
              + "; it has "
              + zones(table));
    }
    Line line = line(Curve.of(found.get()), patch, term, code.cite(table));
    boolean open = isOpenHip(figure) && "23".contains(row);
    return new Result<>(work.write(open ? line.noting(openHip(line.note())) : line));
  }

  private Line line(Curve curve, Patch patch, Term term, Source source) {
    Term result = valued(term, curve.at(patch.areaM2()));
    return curve.line(result, patch.area(), source, work.measure());
  }

  private static Term valued(Term term, double value) {
    return Term.number(term.symbol(), term.meaning(), value);
  }

  private String openHip(String note) {
    boolean severe = code.choices().hipCurve() == HipCurve.TO_200_SQ_FT;
    String taken =
        severe
            ? "transcriptions end this line at 100 or 200 ft²; the severe 200 is taken"
            : "transcriptions end this line at 100 or 200 ft²; 100 was chosen";
    return note.isEmpty() ? taken : note + "; " + taken;
  }

  private String key(String figure) {
    String key = "gcp-" + code.edition().label() + "-" + figure;
    boolean shorter = isOpenHip(figure) && code.choices().hipCurve() == HipCurve.TO_100_SQ_FT;
    return shorter ? key + "-end-100" : key;
  }

  private boolean isOpenHip(String figure) {
    return figure.equals(OPEN_HIP) && code.edition() == AsceEdition.ASCE_7_22;
  }

  private static String zones(Table table) {
    return table.rows().stream()
        .map(row -> row.word("zone"))
        .filter(zone -> !zone.equals(POSITIVE))
        .collect(Collectors.joining(", "));
  }

  /** The positive coefficient that a parapet lends a zone, if it is high enough. */
  Optional<Double> parapetWall(WindBuilding building, String figure, Patch patch) {
    Table table = code.table("parapet-walls");
    return table
        .row("zone", patch.zone())
        .filter(row -> row.word("figure").equals(figure))
        .filter(row -> building.parapetM() >= row.number("parapet") - 1e-9)
        .map(row -> wall(row.word("wall-zone"), patch, code.cite(table)));
  }

  private double wall(String wallZone, Patch patch, Source note) {
    boolean reduced = code.choices().wallReduced();
    Term positive = new Coefficients(0, 0).positiveTerm();
    Table table = code.table("gcp-wall");
    Curve curve = Curve.of(table.row("zone", wallZone).orElseThrow());
    Term term = reduced ? Term.number("GC_p_wall", "coefficient of the wall", 0) : positive;
    Line line = line(curve, patch, term, code.cite(table));
    double value = work.write(line.noting(parapetNote(wallZone, note)));
    return reduced ? reduced(value, positive) : value;
  }

  private String parapetNote(String wallZone, Source note) {
    String reduction = code.choices().wallReduced() ? "taken, as chosen" : "not taken";
    return "because of the parapet that of wall zone "
        + wallZone
        + ", "
        + note.clause()
        + "; it is open whether the 10 percent less of walls hold here: "
        + reduction;
  }

  private double reduced(double value, Term positive) {
    Table table = code.table("wall-reduction");
    double factor = code.number("wall-reduction", "factor");
    Term wall = Term.number("GC_p_wall", "coefficient of the wall", value);
    Term share = Term.number("r", "reduction of walls", factor);
    return work.write(
        valued(positive, value * factor), "GC_p_wall * r", code.cite(table), wall, share);
  }
}
