package clampwise.facts.loads;

import clampwise.calc.trail.Measure;
import clampwise.catalogue.Limits;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.WindRoof;
import clampwise.finding.Subject;
import clampwise.job.Job;
import clampwise.job.Loads;
import clampwise.job.Quantity.Slope;
import clampwise.job.Site;
import clampwise.job.Site.LoadCode;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.Optional;
import java.util.function.Function;

/**
 * A field with all that its loads depend on.
 *
 * @param onPlane what it shares with the other fields of its plane
 */
record FieldSite(
    Layout layout, PlaneLayout plane, FieldLayout field, Limits limits, FieldsOfPlane onPlane) {

  /** A field that is looked at on its own. */
  FieldSite(Layout layout, PlaneLayout plane, FieldLayout field, Limits limits) {
    this(layout, plane, field, limits, new FieldsOfPlane(plane));
  }

  Subject subject() {
    return Subjects.field(field.name());
  }

  Job job() {
    return layout.job();
  }

  Optional<LoadCode> code() {
    return roof().code();
  }

  /** The roof of the plane, as the wind standard asks for it. */
  WindRoof roof() {
    return new WindRoof(job(), plane.plane(), layout.catalogue().codes());
  }

  <T> Optional<T> site(Function<Site, Optional<T>> of) {
    return job().site().flatMap(of);
  }

  <T> Optional<T> loads(Function<Loads, Optional<T>> of) {
    return job().loads().flatMap(of);
  }

  <T> Optional<T> snow(Function<Loads.Snow, Optional<T>> of) {
    return loads(Loads::snow).flatMap(of);
  }

  <T> Optional<T> wind(Function<Loads.WindReading, Optional<T>> of) {
    return loads(Loads::wind).flatMap(of);
  }

  <T> Optional<T> annex(Function<Loads.Annex, Optional<T>> of) {
    return loads(Loads::annex).flatMap(of);
  }

  /** Says that an input is not given, or that it could not be read where it is. */
  String missing(String what, String... path) {
    return job().unreadable().missing(what, path);
  }

  /** The same of a value of the covering. */
  String ofPanel(String what, String key) {
    return missing(what, "panels", plane.panelName(), key);
  }

  /** The same of the slope of the plane. */
  String slopeMissing() {
    return missing("the slope of the plane", "planes", plane.name(), "slope");
  }

  /** Says that an input could not be read, if so; it must not count as left out. */
  Optional<String> lost(String what, String... path) {
    return job().unreadable().touches(path)
        ? Optional.of(what + " could not be read")
        : Optional.empty();
  }

  /** The unit in which the designer thinks of pressures. */
  Unit pressureUnit() {
    Optional<Unit> written = site(Site::groundSnow).map(snow -> snow.unit());
    boolean imperial = site(Site::windSpeed).filter(v -> v.unit().equals(Units.MPH)).isPresent();
    return written.orElse(imperial ? Units.PSF : Units.PASCAL);
  }

  /** The units in which shown work is printed. */
  Measure measure() {
    boolean psf = pressureUnit().equals(Units.PSF);
    return psf ? Measure.IMPERIAL : Measure.METRIC;
  }

  /** Slope of the plane [rad]; level where the roof is flat and no slope is written. */
  Optional<Double> slopeRad() {
    return plane.plane().slope().map(Slope::rad).or(() -> roof().slopeRad());
  }
}
