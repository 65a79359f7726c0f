package clampwise.facts.movement;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Bonding.Jumper;
import clampwise.job.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the frames that each entry of the jumpers joins, as far as they lie on one plane. */
final class JumperPairs {

  private record Frame(MovingPlane moving, PlacedModule module) {}

  private final List<MovingPlane> planes;
  private final Map<String, Frame> frames = new HashMap<>();

  JumperPairs(Layout layout, Limits limits, Answers answers) {
    planes =
        layout.planes().stream()
            .flatMap(plane -> MovingPlane.of(layout, plane, limits, answers).stream())
            .toList();
  }

  List<JumperPair> of(Jumper jumper) {
    return Stream.concat(
            between(jumper).stream(),
            jumper.field().stream().flatMap(name -> columns(name.value()).stream()))
        .toList();
  }

  @SuppressWarnings("ReferenceEquality") // each plane has one of its own
  private Optional<JumperPair> between(Jumper jumper) {
    return frame(jumper.from())
        .flatMap(
            from ->
                frame(jumper.to())
                    .filter(to -> to.moving() == from.moving())
                    .map(to -> JumperPair.of(from.moving(), from.module(), to.module())));
  }

  private Optional<Frame> frame(Optional<Text> name) {
    if (name.isPresent() && frames.isEmpty()) {
      planes.forEach(this::addFrames);
    }
    return name.map(Text::value).map(frames::get);
  }

  private void addFrames(MovingPlane moving) {
    modules(moving.plane()).forEach(each -> frames.put(each.name(), new Frame(moving, each)));
  }

  private static Stream<PlacedModule> modules(PlaneLayout plane) {
    return plane.fields().stream().flatMap(field -> field.modules().stream());
  }

  /** Each column with the next one. */
  private List<JumperPair> columns(String field) {
    for (MovingPlane moving : planes) {
      for (FieldLayout layout : moving.plane().fields()) {
        if (layout.name().equals(field)) {
          return columns(moving, layout);
        }
      }
    }
    return List.of();
  }

  private static List<JumperPair> columns(MovingPlane moving, FieldLayout field) {
    List<JumperPair> pairs = new ArrayList<>();
    PlacedModule before = field.modules().get(0);
    for (PlacedModule module : field.modules()) {
      if (module.column() != before.column()) {
        pairs.add(JumperPair.of(moving, before, module));
        before = module;
      }
    }
    return pairs;
  }
}
