package clampwise.plan;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Finds the places of subjects on the roof by the words of their paths: a module before its field,
 * a field before its plane.
 */
final class Spots {

  static final GeometryFactory SHAPES = new GeometryFactory();

  private static final double ATTACHMENT_M = 0.12;

  private final Map<String, Spot> byName = new HashMap<>();
  private final Map<String, FieldLayout> fields = new HashMap<>();
  private final Map<String, PlaneLayout> planes = new HashMap<>();
  private final Map<String, PlaneLayout> planeOf = new HashMap<>();

  Spots(Layout layout) {
    for (PlaneLayout plane : layout.planes()) {
      planes.put(plane.name(), plane);
      for (FieldLayout field : plane.fields()) {
        fields.put(field.name(), field);
        planeOf.put(field.name(), plane);
        field.modules().forEach(m -> byName.put(m.name(), spot(plane, box(m))));
        field.attachments().forEach(a -> byName.put(a.name(), spot(plane, box(a))));
      }
    }
  }

  /** The place of a subject, if it is on the roof. */
  Optional<Spot> of(Subject subject) {
    String field = "";
    String plane = "";
    Optional<Spot> found = Optional.empty();
    for (String part : subject.path().split(Subject.SEPARATOR, -1)) {
      field = part.startsWith("fields.") ? part.substring("fields.".length()) : field;
      plane = part.startsWith("planes.") ? part.substring("planes.".length()) : plane;
      Optional<Spot> nearer = within(field, plane, part);
      found = nearer.isPresent() ? nearer : found;
    }
    return found;
  }

  private Optional<Spot> within(String field, String plane, String part) {
    if (part.equals("fields." + field)) {
      return Optional.ofNullable(fields.get(field)).map(this::spot);
    }
    if (part.equals("planes." + plane)) {
      return Optional.ofNullable(planes.get(plane)).map(Spots::whole);
    }
    Optional<Spot> named = named(field, part);
    return named.isPresent() ? named : partOf(field, plane, part);
  }

  /** A module or an attachment, with or without the name of its field. */
  private Optional<Spot> named(String field, String part) {
    String name = after("module ", part).or(() -> after("attachment ", part)).orElse(part);
    return Optional.ofNullable(byName.getOrDefault(field + "." + name, byName.get(name)));
  }

  private Optional<Spot> partOf(String field, String plane, String part) {
    PlaneLayout on = field.isEmpty() ? planes.get(plane) : planeOf.get(field);
    if (on == null) {
      return Optional.empty();
    }
    return Optional.ofNullable(fields.get(field))
        .flatMap(known -> line(known, on, part))
        .or(() -> seam(on, part))
        .or(() -> edge(on, part))
        .or(() -> obstacle(on, part));
  }

  private static Optional<Spot> line(FieldLayout field, PlaneLayout plane, String part) {
    Optional<Integer> number = after("line ", part).flatMap(Spots::number);
    if (number.isEmpty() || number.get() > field.lines().size()) {
      return Optional.empty();
    }
    Envelope extent = extent(field);
    double upM = field.lines().get(number.get() - 1);
    return Optional.of(spot(plane, new Envelope(extent.getMinX(), extent.getMaxX(), upM, upM)));
  }

  private static Optional<Spot> seam(PlaneLayout plane, String part) {
    return plane.seams().stream()
        .filter(seam -> seam.name().equals(part))
        .findFirst()
        .map(s -> spot(plane, new Envelope(s.alongM(), s.alongM(), s.fromUpM(), s.toUpM())));
  }

  private static Optional<Spot> edge(PlaneLayout plane, String part) {
    String number = part.contains(",") ? part.substring(0, part.indexOf(',')) : part;
    return after("edge ", number)
        .flatMap(Spots::number)
        .filter(n -> n <= plane.edges().size())
        .map(n -> plane.edges().get(n - 1).line().toGeometry(SHAPES))
        .map(line -> new Spot(plane.name(), line, false));
  }

  private static Optional<Spot> obstacle(PlaneLayout plane, String part) {
    return plane.obstacles().stream()
        .filter(obstacle -> obstacle.name().equals(part))
        .findFirst()
        .map(Obstacle::body)
        .map(body -> new Spot(plane.name(), body, false));
  }

  private Spot spot(FieldLayout field) {
    return spot(Objects.requireNonNull(planeOf.get(field.name())), extent(field));
  }

  private static Spot spot(PlaneLayout plane, Envelope extent) {
    return new Spot(plane.name(), SHAPES.toGeometry(extent), false);
  }

  private static Spot whole(PlaneLayout plane) {
    return new Spot(plane.name(), SHAPES.toGeometry(View.of(plane)), true);
  }

  static Envelope extent(FieldLayout field) {
    Envelope extent = new Envelope();
    field.modules().forEach(module -> extent.expandToInclude(box(module)));
    return extent;
  }

  static Envelope box(PlacedModule module) {
    return new Envelope(module.leftM(), module.rightM(), module.bottomM(), module.topM());
  }

  private static Envelope box(Attachment attachment) {
    Envelope box = new Envelope(new Coordinate(attachment.alongM(), attachment.upM()));
    box.expandBy(ATTACHMENT_M);
    return box;
  }

  private static Optional<String> after(String start, String part) {
    return part.startsWith(start) ? Optional.of(part.substring(start.length())) : Optional.empty();
  }

  private static Optional<Integer> number(String text) {
    boolean digits =
        !text.isEmpty() && text.length() < 7 && text.chars().allMatch(Character::isDigit);
    return digits ? Optional.of(Integer.parseInt(text)).filter(n -> n > 0) : Optional.empty();
  }
}
