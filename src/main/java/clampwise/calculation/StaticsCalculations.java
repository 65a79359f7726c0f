package clampwise.calculation;

import clampwise.catalogue.Limits;
import clampwise.catalogue.LimitsReader;
import clampwise.catalogue.Tables;
import clampwise.catalogue.TablesReader;
import java.util.List;
import java.util.stream.Stream;

/** Calculations of the load path and of movement. */
final class StaticsCalculations {

  private StaticsCalculations() {}

  static List<Calculation> all() {
    Limits limits = LimitsReader.read();
    Tables statics = TablesReader.read("statics.yaml");
    Tables thermal = TablesReader.read("thermal.yaml");
    return Stream.of(
            BeamCalculations.all(),
            new AttachmentCalculations(statics).all(),
            SlopeCalculations.all(),
            new RoofCalculations(limits).all(),
            new ThermalCalculations(thermal, limits).all())
        .flatMap(List::stream)
        .toList();
  }
}
