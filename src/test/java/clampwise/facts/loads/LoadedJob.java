package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.Result;
import clampwise.catalogue.LimitsReader;
import clampwise.facts.BaseJob;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import java.util.List;

/** The standing seam job of the rules with more laid over it, and the loads of its field. */
final class LoadedJob {

  private final PlaneLoads plane;

  private LoadedJob(PlaneLoads plane) {
    this.plane = plane;
  }

  static LoadedJob seams(String over) {
    Layout layout = BaseJob.with("seam-roof", over).layout();
    PlaneLayout first = layout.planes().get(0);
    List<Outcome<LoadedField>> fields =
        first.fields().stream()
            .map(field -> new FieldSite(layout, first, field, LimitsReader.read()))
            .map(FieldLoads::of)
            .<Outcome<LoadedField>>map(
                loads -> loads.then(known -> new Result<>(LoadedField.of(known))))
            .toList();
    return new LoadedJob(PlaneLoads.of(layout.job(), first, LimitsReader.read(), fields));
  }

  PlaneLoads plane() {
    return plane;
  }

  LoadedField field() {
    return plane.fields().get(0);
  }

  /** Uplift of an attachment in a combination. */
  double upliftN(int attachment, int combination) {
    return field()
        .forces(field().field().attachments().get(attachment))
        .result()
        .orElseThrow()
        .get(combination)
        .normalN();
  }

  /** The largest uplift on any module [Pa]. */
  double mostUpliftPa() {
    return field().field().modules().stream()
        .map(field().loads()::of)
        .flatMap(load -> java.util.Arrays.stream(load.upPa()).boxed())
        .mapToDouble(pa -> -pa)
        .max()
        .orElseThrow();
  }
}
