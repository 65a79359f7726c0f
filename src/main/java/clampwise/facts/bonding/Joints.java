package clampwise.facts.bonding;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Grip;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Bonding.Jumper;
import clampwise.job.Count;
import clampwise.job.Text;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds what joins frames: mid clamps, and jumpers. */
final class Joints {

  private final Frames frames;
  private final BondParts parts;

  Joints(Frames frames, BondParts parts) {
    this.frames = frames;
    this.parts = parts;
  }

  /** What joins the frames of a field by its clamps. */
  Stream<Joint> clamped(FieldLayout field) {
    return field
        .attachmentsUnknown()
        .map(reason -> stacked(field, reason))
        .orElseGet(() -> held(field));
  }

  private Stream<Joint> stacked(FieldLayout field, String reason) {
    return field.modules().stream()
        .flatMap(
            lower ->
                frames.above(lower).stream()
                    .map(upper -> new Joint(lower, upper, Optional.of(reason))));
  }

  private Stream<Joint> held(FieldLayout field) {
    Map<String, Optional<String>> doubts = new HashMap<>();
    Set<String> told = new HashSet<>();
    return field.attachments().stream()
        .filter(drawn -> drawn.kind() == Kind.MID && drawn.grips().size() > 1)
        .map(drawn -> joint(drawn, doubts.computeIfAbsent(key(drawn), k -> doubt(field, drawn))))
        .filter(
            joint ->
                told.add(joint.one().name() + " " + joint.other().name() + " " + joint.doubt()));
  }

  private static String key(Attachment drawn) {
    return drawn.clamp().map(Text::value).orElse("");
  }

  private Optional<String> doubt(FieldLayout field, Attachment drawn) {
    return parts.midClamp(field, drawn.clamp()).doubt();
  }

  private static Joint joint(Attachment drawn, Optional<String> doubt) {
    List<Grip> grips = drawn.grips();
    return new Joint(grips.get(0).module(), grips.get(1).module(), doubt);
  }

  /** What one entry of the jumpers joins. */
  Stream<Joint> tied(Jumper jumper) {
    Optional<String> doubt = parts.jumper(jumper).doubt();
    Stream<Joint> single =
        frame(jumper.from())
            .flatMap(from -> frame(jumper.to()).map(to -> new Joint(from, to, doubt)))
            .stream();
    return Stream.concat(single, row(jumper, doubt));
  }

  private Optional<PlacedModule> frame(Optional<Text> name) {
    return name.flatMap(module -> frames.find(module.value()));
  }

  /** One jumper for each pair of neighbouring columns that both have a module in the row. */
  private Stream<Joint> row(Jumper jumper, Optional<String> doubt) {
    Optional<Integer> row = jumper.row().map(Count::value);
    return jumper.field().flatMap(name -> frames.field(name.value())).stream()
        .flatMap(field -> lowestPairs(field, row).stream())
        .flatMap(left -> frames.rightOf(left).map(right -> new Joint(left, right, doubt)).stream());
  }

  private List<PlacedModule> lowestPairs(FieldLayout field, Optional<Integer> row) {
    Map<Integer, PlacedModule> lowest =
        field.modules().stream()
            .filter(module -> row.isEmpty() || row.get() == module.row())
            .filter(module -> frames.rightOf(module).isPresent())
            .collect(
                Collectors.toMap(
                    PlacedModule::column, module -> module, Joints::lower, LinkedHashMap::new));
    return List.copyOf(lowest.values());
  }

  private static PlacedModule lower(PlacedModule one, PlacedModule other) {
    return one.row() <= other.row() ? one : other;
  }
}
