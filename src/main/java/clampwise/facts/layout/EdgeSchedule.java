package clampwise.facts.layout;

import clampwise.job.Count;
import clampwise.job.Field;
import clampwise.job.ModuleType;
import clampwise.job.Named;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A number of clamps on each module edge, each at the seam best placed in its clamp zone. */
final class EdgeSchedule {

  private final Named.Item<Field> field;
  private final LineMap lines;
  private final SeamMap seams;
  private final EdgeRules rules;
  private final Map<String, ClampZones> zonesByType = new HashMap<>();
  private final Map<Column, Choice> choices = new HashMap<>();

  private record Column(double leftM, double alongM, String type, int clamps) {}

  private record Choice(List<SeamLine> crossing, List<SeamLine> seams) {}

  EdgeSchedule(Named.Item<Field> field, LineMap lines, SeamMap seams, EdgeRules rules) {
    this.field = field;
    this.lines = lines;
    this.seams = seams;
    this.rules = rules;
  }

  List<Planned> read(Count perEdge) {
    List<Planned> planned = new ArrayList<>();
    for (int line = 1; line <= lines.count(); line++) {
      planned.addAll(on(line, perEdge));
    }
    return planned;
  }

  /** A seam chosen for the module below and for the one above carries one attachment. */
  private List<Planned> on(int line, Count perEdge) {
    double upM = lines.upM(line);
    Map<Double, SeamLine> chosen = new TreeMap<>();
    for (PlacedModule module : lines.modulesOn(line)) {
      List<SeamLine> crossing = seams.crossing(module.leftM(), module.rightM(), upM);
      choice(module, crossing, perEdge.value()).forEach(seam -> chosen.put(seam.alongM(), seam));
    }
    return chosen.values().stream()
        .map(seam -> Planned.crossing(field.name().value(), line, upM, seam, perEdge.at()))
        .toList();
  }

  /** The modules of a column that the same seams cross are clamped alike. */
  private List<SeamLine> choice(PlacedModule module, List<SeamLine> crossing, int clamps) {
    Column column = new Column(module.leftM(), module.alongM(), module.typeName(), clamps);
    Choice known = choices.get(column);
    if (known == null || !known.crossing.equals(crossing)) {
      known =
          new Choice(
              crossing, new SeamChoice(module, zones(module), crossing, rules).choose(clamps));
      choices.put(column, known);
    }
    return known.seams;
  }

  private ClampZones zones(PlacedModule module) {
    return zonesByType.computeIfAbsent(
        module.typeName(), name -> zones(module.type(), module.clampedSide()));
  }

  private ClampZones zones(ModuleType type, ModuleType.Side side) {
    return ClampZones.of(type, side).carrying(field.value().designLoad(), rules.testOverDesign());
  }
}
