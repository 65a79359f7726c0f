package clampwise.calculation;

import static clampwise.units.Dimension.MASS;
import static clampwise.units.Dimension.NUMBER;

import clampwise.calc.takeoff.CrewTime;
import clampwise.calc.takeoff.FullPallet;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.catalogue.LimitsReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Crew time and pallets. */
final class TakeoffCalculations {

  private static final double MOST = 1e6;

  private final Limits rules;

  private TakeoffCalculations(Limits rules) {
    this.rules = rules;
  }

  static List<Calculation> all() {
    TakeoffCalculations all = new TakeoffCalculations(LimitsReader.takeoff());
    return List.of(all.crew(), all.pallets());
  }

  private Calculation crew() {
    return new Calculation(
        "crew-time",
        "Time of a crew on the roof, placement of the modules apart from all else",
        "a crew that knows the parts, in fair weather; practice, no source",
        List.of(
            count("modules", "modules"),
            count("attachments", "seam clamps or rib brackets"),
            Input.word("kind", "kind of attachment", "seam-clamp", "rib-bracket")
                .unless("seam-clamp"),
            count("clamps", "mid and end clamps"),
            count("jumpers", "bonding jumpers").unless("0"),
            count("lugs", "grounding lugs").unless("1")),
        (given, work) -> Results.of(crew(given, work)));
  }

  private static Input count(String name, String meaning) {
    return Input.of(name, meaning, NUMBER, 0.0, MOST);
  }

  private Term[] crew(Given given, Work work) {
    CrewTime crew = new CrewTime(work);
    Term modules = Term.number("n_m", "modules", given.number("modules"));
    Term placement =
        add(crew, "t_p", "placement", modules, time("t_1", "a module", "placement-time"));
    boolean brackets = given.word("kind").equals("rib-bracket");
    String key = brackets ? "rib-bracket-time" : "seam-clamp-time";
    Term attachments = Term.number("n_a", "attachments", given.number("attachments"));
    add(crew, "t_a", "attachments", attachments, time("t_2", "an attachment", key));
    Term clamps = Term.number("n_c", "clamps", given.number("clamps"));
    add(crew, "t_c", "clamps", clamps, time("t_3", "a clamp", "clamp-time"));
    Term jumpers = Term.number("n_j", "jumpers", given.number("jumpers"));
    add(crew, "t_j", "jumpers", jumpers, time("t_4", "a jumper", "jumper-time"));
    Term lugs = Term.number("n_l", "lugs", given.number("lugs"));
    add(crew, "t_l", "lugs", lugs, time("t_5", "a lug", "lug-time"));
    add(crew, "t_w", "wiring", modules, time("t_6", "wiring a module", "module-wiring-time"));
    Piece setUp = time("t_0", "set-up, once a job", "set-up-time");
    return new Term[] {placement, crew.all(setUp.each(), setUp.from().source())};
  }

  /** Time for one piece, and where it is from. */
  private record Piece(Term each, Limit from) {}

  private Piece time(String symbol, String meaning, String key) {
    Limit limit = rules.get(key);
    return new Piece(CrewTime.time(symbol, "time for " + meaning, limit.si()), limit);
  }

  private static Term add(CrewTime crew, String symbol, String phase, Term pieces, Piece piece) {
    Term result = CrewTime.time(symbol, "time of " + phase, 0);
    return crew.add(result, pieces, piece.each(), piece.from().source());
  }

  private Calculation pallets() {
    return new Calculation(
        "pallets",
        "Pallets that modules of one type fill, and what a full one weighs",
        "modules of one type",
        List.of(
            count("modules", "modules of the type"),
            Input.of("per-pallet", "modules on a pallet", NUMBER, 1.0, 1000.0),
            Input.of("module-mass", "mass of a module", MASS, 1e-3).orNothing()),
        (given, work) -> Results.of(pallets(given, work)));
  }

  private Term[] pallets(Given given, Work work) {
    Term inEach = Term.number("k", "modules on a pallet", given.number("per-pallet"));
    Term modules = Term.number("n", "modules", given.number("modules"));
    List<Term> results = new ArrayList<>(List.of(FullPallet.count(modules, inEach, work)));
    Optional<Double> moduleKg = given.find("module-mass");
    if (moduleKg.isPresent()) {
      Limit pallet = rules.get("pallet-mass");
      Term module = new Term("m", "mass of a module", moduleKg.get(), MASS);
      Term empty = new Term("m_0", "mass of the empty pallet", pallet.si(), MASS);
      results.add(FullPallet.mass(inEach, module, empty, pallet.source(), work));
    }
    return results.toArray(Term[]::new);
  }
}
