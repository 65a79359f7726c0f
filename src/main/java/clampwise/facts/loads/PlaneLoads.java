package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.combination.Combination;
import clampwise.catalogue.Limits;
import clampwise.facts.Subjects;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Job;
import clampwise.job.Named;
import clampwise.job.Panel;
import clampwise.source.Span;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The loads of all fields of a plane, which has at least one.
 *
 * @param unknown why the loads of one of them are not known, if so; what they bring to a seam or a
 *     panel together is then not known either
 */
record PlaneLoads(
    Job job, PlaneLayout plane, Limits limits, List<LoadedField> fields, Optional<String> unknown) {

  static PlaneLoads of(
      Job job, PlaneLayout plane, Limits limits, List<Outcome<LoadedField>> fields) {
    List<LoadedField> known = new ArrayList<>();
    Optional<String> unknown = Optional.empty();
    for (Outcome<LoadedField> field : fields) {
      if (field instanceof Result<LoadedField> loaded) {
        known.add(loaded.value());
      } else if (field instanceof NotApplicable<LoadedField> none) {
        unknown = unknown.or(() -> Optional.of(none.reason()));
      }
    }
    return new PlaneLoads(job, plane, limits, known, unknown);
  }

  /** Why the uplift on the plane is not known, if so. */
  Optional<String> upliftUnknown() {
    return fields.stream()
        .map(field -> field.loads().windUnknown())
        .reduce(unknown, (one, other) -> one.or(() -> other));
  }

  /** Why the force down the slope is not known, if so. */
  Optional<String> slopeUnknown() {
    return fields.stream()
        .map(field -> field.loads().snowUnknown())
        .reduce(unknown, (one, other) -> one.or(() -> other));
  }

  /** Combinations are those of the site, the same for all fields. */
  List<Combination> combinations() {
    return fields.get(0).combinations();
  }

  /** The standards are those of the site, the same for all fields. */
  Standard standard() {
    return fields.get(0).loads().standard();
  }

  Subject subject() {
    return Subjects.plane(plane.name());
  }

  String covering() {
    return plane.panelName();
  }

  /** Says that a value of the covering is not given, or that it could not be read. */
  String ofPanel(String what, String key) {
    return job.unreadable().missing(what, "panels", covering(), key);
  }

  /** Whether a value of the covering is written that could not be read. */
  boolean isPanelKeyLost(String key) {
    return job.unreadable().touches("panels", covering(), key);
  }

  /** Where a missing value of the covering would be written. */
  Span panelAt() {
    return Optional.ofNullable(job.panels().items().get(covering()))
        .map(Named.Item::name)
        .map(text -> text.at())
        .orElse(plane.plane().panel().at());
  }

  /** Where the first of its fields was written. */
  Span fieldsAt() {
    return plane.fields().get(0).at();
  }

  /** The covering, if it is a seam roof that floats or is held on clips. */
  Optional<Panel> onClips() {
    return plane
        .panel()
        .filter(panel -> panel.kind().value() == Panel.Kind.STANDING_SEAM)
        .filter(
            panel ->
                panel
                    .clips()
                    .filter(clips -> clips.value() == Panel.Clips.THROUGH_FASTENED)
                    .isEmpty());
  }

  /** The unit in which the designer thinks of forces. */
  Unit forceUnit() {
    return forceUnit(fields.get(0).site());
  }

  static Unit forceUnit(FieldSite site) {
    return site.pressureUnit().equals(Units.PSF) ? Units.POUND_FORCE : Units.NEWTON;
  }

  /** The unit in which the designer thinks of places on the plane. */
  Unit lengthUnit() {
    return plane.panel().flatMap(Panel::pitch).map(pitch -> pitch.unit()).orElse(Unit.MILLIMETRE);
  }
}
