package clampwise.calc.en;

import clampwise.calc.en.Coefficient.Side;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Coefficients and pressures of the zones of one plane, with their lines.
 *
 * @param tables tables of EN 1991-1-4
 * @param roof the plane
 * @param areaM2 loaded area [m²]
 */
public record ZoneCoefficients(EnTables tables, EnRoof roof, double areaM2) {

  /** Why the tables do not cover a plane, if they do not. */
  public static Optional<String> outside(EnTables tables, EnRoof roof) {
    EnRoof.Shape shape = RoofZones.shape(tables, roof);
    if (shape == EnRoof.Shape.FLAT) {
      boolean isSteep = Math.abs(roof.pitchRad()) > tables.row("flat-pitch").number("below") + 1e-9;
      return isSteep
          ? Optional.of("a flat roof has a pitch of at most 5 degrees")
          : Optional.empty();
    }
    List<Table.Row> rows =
        tables.zone(shape == EnRoof.Shape.DUOPITCH ? "duopitch-0" : "monopitch-0", "G");
    double least = rows.get(0).number("pitch");
    double most = rows.get(rows.size() - 1).number("pitch");
    boolean isWithin = roof.pitchRad() >= least - 1e-9 && roof.pitchRad() <= most + 1e-9;
    return isWithin
        ? Optional.empty()
        : Optional.of("the tables of this roof shape do not reach this pitch");
  }

  /** Names of the zones that the table of a wind direction has. */
  public List<String> zones(WindDirection direction) {
    return tables.table(table(direction)).rows().stream()
        .map(row -> row.word("zone"))
        .distinct()
        .toList();
  }

  /** Suction coefficient of a zone, if it has one; writes its lines. */
  public Optional<Double> suction(WindDirection direction, String zone, Work work) {
    return coefficient(direction, zone, Side.SUCTION, work);
  }

  /** Pressure coefficient of a zone, if it has one; writes its lines. */
  public Optional<Double> pressure(WindDirection direction, String zone, Work work) {
    return coefficient(direction, zone, Side.PRESSURE, work);
  }

  /** Pressures of a zone, zero on a side that the table does not have; writes their lines. */
  public ZonePressure pressure(RoofZone zone, double peakPa, Work work) {
    return new ZonePressure(zone, suctionPa(zone, peakPa, work), pressurePa(zone, peakPa, work));
  }

  /** Wind away from a zone, negative or zero [Pa]; writes its lines. */
  public double suctionPa(RoofZone zone, double peakPa, Work work) {
    Pressed pressed = new Pressed(peakPa, source(zone.direction()), work);
    return suction(zone.direction(), zone.name(), work)
        .map(c -> Math.min(0, pressed.write("w_up", "wind away", c)))
        .orElse(0.0);
  }

  /** Wind toward a zone, positive or zero [Pa]; writes its lines. */
  public double pressurePa(RoofZone zone, double peakPa, Work work) {
    Pressed pressed = new Pressed(peakPa, source(zone.direction()), work);
    return pressure(zone.direction(), zone.name(), work)
        .map(c -> Math.max(0, pressed.write("w_down", "wind toward", c)))
        .orElse(0.0);
  }

  private record Pressed(double peakPa, Source source, Work work) {

    double write(String symbol, String meaning, double coefficient) {
      return work.write(
          new Line(
              Term.pressure(symbol, meaning, peakPa * coefficient),
              "q_p*c_pe",
              List.of(
                  Term.pressure("q_p", "peak velocity pressure", peakPa),
                  Term.number("c_pe", "external pressure coefficient", coefficient)),
              new Source(source.document(), source.edition(), "Eq. 5.1", source.obtained(), ""),
              "for modules an assumption: the standard has no rule for them"));
    }
  }

  private Optional<Double> coefficient(WindDirection direction, String zone, Side side, Work work) {
    Coefficient coefficient =
        new Coefficient(source(direction), row -> tables.isDisputed(table(direction), row), work);
    return RoofZones.shape(tables, roof) == EnRoof.Shape.FLAT
        ? coefficient.of(flatRows(zone), parapet(), "parapet", side, areaM2)
        : coefficient.of(tables.zone(table(direction), zone), pitch(), "pitch", side, areaM2);
  }

  private Term pitch() {
    return Term.angle("alpha", "pitch", roof.pitchRad());
  }

  private Term parapet() {
    double ratio = roof.parapetM().map(m -> m / roof.heightM()).orElse(0.0);
    return Term.number("r", "parapet height over roof height", ratio);
  }

  /** Parapets lower than the first of the table count as a sharp edge. */
  private List<Table.Row> flatRows(String zone) {
    List<Table.Row> parapets =
        tables.zone("flat", zone).stream().filter(row -> row.find("parapet").isPresent()).toList();
    boolean isSharp = parapet().si() < parapets.get(0).number("parapet") - 1e-12;
    return isSharp
        ? tables.zone("flat", zone).stream()
            .filter(row -> row.word("edge").equals("sharp"))
            .map(ZoneCoefficients::atNoParapet)
            .toList()
        : parapets;
  }

  private static Table.Row atNoParapet(Table.Row row) {
    Map<String, Double> numbers = new LinkedHashMap<>(row.numbers());
    numbers.put("parapet", 0.0);
    return new Table.Row(row.words(), numbers);
  }

  private Source source(WindDirection direction) {
    return tables.source(table(direction));
  }

  private String table(WindDirection direction) {
    return switch (RoofZones.shape(tables, roof)) {
      case FLAT -> "flat";
      case DUOPITCH -> direction.isAlongEave() ? "duopitch-90" : "duopitch-0";
      case MONOPITCH ->
          switch (direction) {
            case UP_THE_SLOPE -> "monopitch-0";
            case DOWN_THE_SLOPE -> "monopitch-180";
            case FROM_THE_LEFT, FROM_THE_RIGHT -> "monopitch-90";
          };
    };
  }
}
