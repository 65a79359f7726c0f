package clampwise.facts.layout;

import clampwise.calc.Snap;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.Grip.Edge;
import clampwise.facts.layout.Grip.Half;
import clampwise.job.Field;
import clampwise.job.ModuleType.ClampZone;
import clampwise.job.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns scheduled attachments into attachments: nearest seam, modules gripped, zone. */
final class AttachmentBuilder {

  private static final Comparator<Planned> BY_LINE_THEN_PLACE =
      Comparator.comparingInt(Planned::line)
          .thenComparingDouble(Planned::alongM)
          .thenComparingDouble(Planned::upM);

  private final Field field;
  private final LineMap lines;
  private final Ground ground;
  private final Map<String, ClampZones> zonesByType = new HashMap<>();

  AttachmentBuilder(Field field, LineMap lines, Ground ground) {
    this.field = field;
    this.lines = lines;
    this.ground = ground;
  }

  /** Attachments in order of line, then left to right. */
  List<Attachment> build(List<Planned> planned) {
    return planned.stream().sorted(BY_LINE_THEN_PLACE).map(this::attachment).toList();
  }

  private Attachment attachment(Planned planned) {
    double alongM = planned.alongM();
    double upM = planned.upM();
    Optional<SeamLine> seam = ground.seams().nearest(alongM, upM);
    List<Grip> grips = planned.line() == 0 ? List.of() : grips(planned);
    Kind kind = kind(grips);
    return new Attachment(
        planned.name(),
        planned.line(),
        alongM,
        upM,
        seam,
        seam.map(nearest -> Snap.m(Math.abs(alongM - nearest.alongM()))).orElse(Double.NaN),
        ground.seams().fromMinorRib(alongM).stream().boxed().findFirst(),
        planned.part().or(field::attachment),
        planned.clamp().or(() -> clamp(kind)),
        kind,
        grips,
        ground.zones().at(alongM, upM),
        planned.at());
  }

  private List<Grip> grips(Planned planned) {
    List<Grip> grips = new ArrayList<>();
    double alongM = planned.alongM();
    lines.below(planned.line(), alongM).ifPresent(m -> grips.add(grip(m, Edge.UPPER, alongM)));
    lines.above(planned.line(), alongM).ifPresent(m -> grips.add(grip(m, Edge.LOWER, alongM)));
    return List.copyOf(grips);
  }

  private Grip grip(PlacedModule module, Edge edge, double alongM) {
    double fromLeftM = Snap.m(alongM - module.leftM());
    double fromRightM = Snap.m(module.alongM() - fromLeftM);
    Optional<ClampZone> row = zones(module).holding(Math.min(fromLeftM, fromRightM));
    Half half = fromLeftM <= fromRightM ? Half.LEFT : Half.RIGHT;
    return new Grip(module, edge, fromLeftM, Math.min(fromLeftM, fromRightM), half, row);
  }

  private ClampZones zones(PlacedModule module) {
    return zonesByType.computeIfAbsent(
        module.typeName(), name -> ClampZones.of(module.type(), module.clampedSide()));
  }

  private static Kind kind(List<Grip> grips) {
    return switch (grips.size()) {
      case 0 -> Kind.NONE;
      case 1 -> Kind.END;
      default -> Kind.MID;
    };
  }

  private Optional<Text> clamp(Kind kind) {
    return switch (kind) {
      case MID -> field.midClamp();
      case END -> field.endClamp();
      case NONE -> Optional.empty();
    };
  }
}
