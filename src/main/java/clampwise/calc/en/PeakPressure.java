package clampwise.calc.en;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.Optional;

/**
 * Peak velocity pressure of EN 1991-1-4, section 4.
 *
 * @param basicPa basic velocity pressure qb [Pa]
 * @param meanSpeed mean wind velocity vm [m/s]
 * @param turbulence turbulence intensity Iv [-]
 * @param peakPa peak velocity pressure qp [Pa]
 */
public record PeakPressure(double basicPa, double meanSpeed, double turbulence, double peakPa) {

  /**
   * Parameters that a national annex may set; the recommended value where nothing is given.
   *
   * @param direction directional factor cdir, 1 recommended [-]
   * @param season seasonal factor cseason, 1 recommended [-]
   * @param orography orography factor co [-]
   * @param terrainFactor terrain factor kr, if the national annex has another procedure [-]
   * @param density density of air [kg/m³]
   * @param turbulenceFactor turbulence factor kI [-]
   */
  public record Annex(
      double direction,
      double season,
      double orography,
      Optional<Double> terrainFactor,
      Optional<Double> density,
      Optional<Double> turbulenceFactor) {

    /** Recommended values, no orography. */
    public static Annex recommended() {
      return new Annex(1, 1, 1, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * Recommended values written out, no orography (EN 1991-1-4, 4.2 to 4.5).
     *
     * @param tables tables of EN 1991-1-4
     * @param category terrain category; without one that is known there is no terrain factor
     * @return every parameter with its recommended value
     */
    public static Annex recommended(EnTables tables, String category) {
      Table.Row pressure = tables.row("peak-pressure");
      return new Annex(
          1,
          1,
          1,
          tables
              .table("terrain")
              .row("category", category)
              .map(terrain -> terrainFactor(tables, terrain.number("roughness"))),
          Optional.of(pressure.number("density")),
          Optional.of(pressure.number("turbulence")));
    }

    private static double terrainFactor(EnTables tables, double roughnessM) {
      Table.Row row = tables.row("roughness-factor");
      return row.number("factor")
          * Math.pow(roughnessM / row.number("roughness"), row.number("power"));
    }
  }

  /**
   * Peak velocity pressure qp(z) (EN 1991-1-4, Eq. 4.1, 4.3 to 4.5, 4.7, 4.8 and table 4.1;
   * formulas read in worked calculations, roughness lengths from libraries): kr = 0.19 (z0 /
   * 0.05)^0.07, cr = kr ln(z / z0), vm = cr co vb, Iv = kI / (co ln(z / z0)), qp = (1 + 7 Iv) ρ vm²
   * / 2. Heights up to 200 m; below the least height of the terrain that height counts.
   *
   * @param tables tables of EN 1991-1-4
   * @param category terrain category, 0 to IV
   * @param basicSpeed fundamental value of the basic wind velocity vb,0 [m/s]
   * @param heightM reference height z above ground [m]
   * @param site parameters open to a national annex, and where the lines go
   * @return the pressure, or why it cannot be given
   */
  public static Outcome<PeakPressure> of(
      EnTables tables, String category, double basicSpeed, double heightM, Site site) {
    Optional<Table.Row> terrain = tables.table("terrain").row("category", category);
    double mostM = tables.row("roughness-factor").number("most-height");
    if (terrain.isEmpty()) {
      return new Outcome.NotApplicable<>("terrain categories are 0, I, II, III and IV");
    }
    return heightM > mostM || heightM <= 0
        ? new Outcome.NotApplicable<>("the wind profile holds up to a height of 200 m")
        : new Outcome.Result<>(
            new Profile(tables, terrain.get(), site.annex, site.work).at(basicSpeed, heightM));
  }

  /**
   * Parameters of the site and the work that takes the lines.
   *
   * @param annex parameters open to a national annex
   * @param work takes the lines
   */
  public record Site(Annex annex, Work work) {}

  private record Profile(EnTables tables, Table.Row terrain, Annex annex, Work work) {

    PeakPressure at(double basicSpeed, double heightM) {
      Term density = given("rho", "density of air [kg/m³]", annex.density, "density");
      Term speed = Term.speed("v_b", "basic wind velocity", basicSpeed(basicSpeed));
      double basicPa = basicPa(density, speed);
      Term rough = Term.length("z_0", "roughness length", terrain.number("roughness"));
      Term factor = terrainFactor(rough);
      Term height = Term.length("z_e", "height that counts", heightM(heightM));
      Term mean = Term.speed("v_m", "mean wind velocity", mean(factor, height, rough, speed));
      Term gusts = Term.number("I_v", "turbulence intensity", gusts(height, rough));
      double peakPa = peakPa(gusts, density, mean);
      exposure(peakPa, basicPa);
      return new PeakPressure(basicPa, mean.si(), gusts.si(), peakPa);
    }

    private Term given(String symbol, String meaning, Optional<Double> value, String column) {
      double number = value.orElseGet(() -> tables.row("peak-pressure").number(column));
      Term term = Term.number(symbol, meaning, number);
      String note = value.isPresent() ? "given" : "assumption: recommended value, none given";
      work.write(Line.given(term, source("4.5 and 4.4"), note));
      return term;
    }

    private double basicSpeed(double fundamental) {
      return work.write(
          Term.speed("v_b", "basic wind velocity", annex.direction * annex.season * fundamental),
          "c_dir*c_season*v_b0",
          source("Eq. 4.1"),
          Term.number("c_dir", "directional factor", annex.direction),
          Term.number("c_season", "seasonal factor", annex.season),
          Term.speed("v_b0", "fundamental basic wind velocity", fundamental));
    }

    private double basicPa(Term density, Term speed) {
      return work.write(
          Term.pressure("q_b", "basic velocity pressure", dynamicPa(density, speed)),
          dynamic("v_b", ""),
          source("Eq. 4.10"),
          density,
          speed);
    }

    private Term terrainFactor(Term rough) {
      Table.Row row = tables.row("roughness-factor");
      double recommended = Annex.terrainFactor(tables, rough.si());
      Term factor = Term.number("k_r", "terrain factor", annex.terrainFactor.orElse(recommended));
      if (annex.terrainFactor.isPresent()) {
        work.write(Line.given(factor, source("4.3.2"), "given for the national annex"));
        return factor;
      }
      String formula =
          Formulas.filled(
              "%s*(%s/%s)^%s",
              Formulas.number(row.number("factor")),
              Formulas.of(work).in(Unit.METRE, "z_0"),
              Formulas.number(row.number("roughness")),
              Formulas.number(row.number("power")));
      work.write(factor, formula, tables.source("roughness-factor"), rough);
      return factor;
    }

    private double heightM(double heightM) {
      double leastM = terrain.number("least-height");
      return work.write(
          Term.length("z_e", "height that counts", Math.max(heightM, leastM)),
          "max(z,z_min)",
          tables.source("terrain"),
          Term.length("z", "reference height", heightM),
          Term.length("z_min", "least height of the terrain", leastM));
    }

    private double mean(Term factor, Term height, Term rough, Term speed) {
      double roughness =
          work.write(
              Term.number(
                  "c_r", "roughness factor", factor.si() * Math.log(height.si() / rough.si())),
              "k_r*ln(z_e/z_0)",
              tables.source("roughness-factor"),
              factor,
              height,
              rough);
      return work.write(
          Term.speed("v_m", "mean wind velocity", roughness * annex.orography * speed.si()),
          "c_r*c_o*v_b",
          source("Eq. 4.3"),
          Term.number("c_r", "roughness factor", roughness),
          Term.number("c_o", "orography factor", annex.orography),
          speed);
    }

    private double gusts(Term height, Term rough) {
      Term factor = given("k_I", "turbulence factor", annex.turbulenceFactor, "turbulence");
      double intensity = factor.si() / (annex.orography * Math.log(height.si() / rough.si()));
      return work.write(
          Term.number("I_v", "turbulence intensity", intensity),
          "k_I/(c_o*ln(z_e/z_0))",
          source("Eq. 4.7"),
          factor,
          Term.number("c_o", "orography factor", annex.orography),
          height,
          rough);
    }

    private double peakPa(Term gusts, Term density, Term mean) {
      double times = tables.row("peak-pressure").number("gust");
      double pa = (1 + times * gusts.si()) * dynamicPa(density, mean);
      return work.write(
          Term.pressure("q_p", "peak velocity pressure", pa),
          dynamic("v_m", "(1+" + Formulas.number(times) + "*I_v)*"),
          source("Eq. 4.8"),
          gusts,
          density,
          mean);
    }

    private void exposure(double peakPa, double basicPa) {
      work.write(
          Term.number("c_e", "exposure factor", peakPa / basicPa),
          "q_p/q_b",
          source("Eq. 4.9"),
          Term.pressure("q_p", "peak velocity pressure", peakPa),
          Term.pressure("q_b", "basic velocity pressure", basicPa));
    }

    private String dynamic(String speed, String times) {
      Formulas formulas = Formulas.of(work);
      String squared = formulas.in(Units.METRE_PER_SECOND, speed) + "^2";
      return formulas.out(Units.PASCAL, times + "0.5*rho*" + squared);
    }

    private static double dynamicPa(Term density, Term speed) {
      return 0.5 * density.si() * speed.si() * speed.si();
    }

    private Source source(String clause) {
      return tables.table("peak-pressure").source(clause);
    }
  }
}
