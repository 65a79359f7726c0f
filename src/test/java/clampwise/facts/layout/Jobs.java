package clampwise.facts.layout;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.LimitsReader;
import clampwise.job.Attach;
import clampwise.job.Building;
import clampwise.job.Choice;
import clampwise.job.Count;
import clampwise.job.Field;
import clampwise.job.Job;
import clampwise.job.LengthRange;
import clampwise.job.ModuleType;
import clampwise.job.ModuleType.ClampZone;
import clampwise.job.Named;
import clampwise.job.Panel;
import clampwise.job.Parts;
import clampwise.job.Plane;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Offset;
import clampwise.job.Quantity.Pressure;
import clampwise.job.Quantity.Slope;
import clampwise.job.Site;
import clampwise.job.Size;
import clampwise.job.Spot;
import clampwise.job.Text;
import clampwise.job.Unreadable;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.Span;
import clampwise.units.Dimension;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Small jobs for tests, made of records; all lengths in millimetres. */
final class Jobs {

  static final Span AT = Span.startOf("job.yaml");
  static final Catalogue EMPTY =
      new Catalogue(
          new Parts(
              Named.none(),
              Named.none(),
              Named.none(),
              Named.none(),
              Named.none(),
              Named.none(),
              Named.none()),
          Named.none());

  Optional<Plane.Seams> seams = Optional.of(nominal(0, 400));
  Size size = size(20_000, 10_000);
  List<Plane.Corner> corners = List.of();
  Optional<Plane.RectangleEdges> edges = Optional.empty();
  Optional<Plane.Purlins> purlins = Optional.empty();
  Optional<Slope> slope = Optional.empty();
  Optional<Site> site = Optional.empty();
  Optional<Building> building = Optional.empty();
  List<Length> minorRibs = List.of();
  double pitchMm = 400;
  ModuleType module = module(1722, 1134, zone(0, 430, 1600));
  Optional<Field.Block> block = Optional.empty();
  List<Field.Column> columns = List.of();
  Optional<Attach> attach = Optional.empty();
  Optional<Length> gap = Optional.of(mm(12));
  Field.Orientation orientation = Field.Orientation.LANDSCAPE;
  Named<Text> otherModules = Named.none();
  Map<String, ModuleType> otherTypes = new LinkedHashMap<>();
  final Problems problems = new Problems();

  Layout layout() {
    return new LayoutBuilder(LimitsReader.read()).build(job(), EMPTY, problems);
  }

  PlaneLayout plane() {
    return layout().planes().get(0);
  }

  FieldLayout field() {
    return layout().fields().get(0);
  }

  List<String> found() {
    return problems.sorted().stream().map(Problem::found).toList();
  }

  private Job job() {
    Map<String, ModuleType> types = new LinkedHashMap<>(otherTypes);
    types.put("M", module);
    return new Job(
        text("test"),
        Optional.empty(),
        Optional.empty(),
        site,
        Optional.empty(),
        building,
        named(Map.of("sheet", panel())),
        named(Map.of("south", planeRecord())),
        named(types),
        Optional.empty(),
        named(Map.of("A", fieldRecord())),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Unreadable.NOTHING);
  }

  private Panel panel() {
    return new Panel(
        choice(Panel.Kind.STANDING_SEAM),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(mm(pitchMm)),
        Optional.empty(),
        Optional.empty(),
        minorRibs,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  private Plane planeRecord() {
    return new Plane(
        text("sheet"),
        slope,
        Optional.empty(),
        Optional.of(size),
        edges,
        corners,
        seams,
        purlins,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Named.none());
  }

  private Field fieldRecord() {
    return new Field(
        text("south"),
        text("M"),
        choice(orientation),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        gap,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        block,
        columns,
        attach,
        otherModules,
        Optional.empty(),
        Optional.empty(),
        Named.none(),
        Named.none(),
        Optional.empty());
  }

  static Plane.Seams nominal(double firstMm, double pitchMm) {
    return new Plane.Seams(
        Optional.of(offset(firstMm)),
        Optional.of(mm(pitchMm)),
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  static Plane.Seams surveyed(double... alongMm) {
    return new Plane.Seams(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Arrays.stream(alongMm).mapToObj(Jobs::offset).toList(),
        Optional.empty());
  }

  static Field.Block block(double alongMm, double upMm, int rows, int columns, String... omit) {
    return new Field.Block(
        spot(alongMm, upMm),
        count(rows),
        count(columns),
        Arrays.stream(omit).map(Jobs::text).toList());
  }

  static Attach perEdge(int clamps) {
    return attach(
        Optional.of(count(clamps)), Optional.empty(), Optional.empty(), Named.none(), List.of());
  }

  static Attach every(int step) {
    return attach(
        Optional.empty(), Optional.of(count(step)), Optional.empty(), Named.none(), List.of());
  }

  static Attach lines(Map<String, List<Integer>> lines) {
    Map<String, List<Count>> counts = new LinkedHashMap<>();
    lines.forEach((line, seams) -> counts.put(line, seams.stream().map(Jobs::count).toList()));
    return attach(Optional.empty(), Optional.empty(), Optional.empty(), named(counts), List.of());
  }

  static Attach points(double... alongThenUpMm) {
    List<Attach.Point> points = new ArrayList<>();
    for (int i = 0; i < alongThenUpMm.length; i += 2) {
      points.add(
          new Attach.Point(
              spot(alongThenUpMm[i], alongThenUpMm[i + 1]), Optional.empty(), Optional.empty()));
    }
    return attach(Optional.empty(), Optional.empty(), Optional.empty(), Named.none(), points);
  }

  static Attach byZone(Map<String, Integer> steps) {
    Map<String, Count> counts = new LinkedHashMap<>();
    steps.forEach((zone, step) -> counts.put(zone, count(step)));
    return new Attach(
        Optional.empty(),
        Optional.empty(),
        named(counts),
        Optional.empty(),
        Named.none(),
        List.of(),
        Optional.empty());
  }

  private static Attach attach(
      Optional<Count> perEdge,
      Optional<Count> every,
      Optional<Count> from,
      Named<List<Count>> lines,
      List<Attach.Point> points) {
    return new Attach(perEdge, every, Named.none(), from, lines, points, Optional.empty());
  }

  static ModuleType module(double lengthMm, double widthMm, ClampZone... zones) {
    return new ModuleType(
        mm(lengthMm),
        mm(widthMm),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(zones),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static ClampZone zone(double minMm, double maxMm, double pa) {
    return new ClampZone(
        choice(ModuleType.Side.LONG),
        new LengthRange(mm(minMm), mm(maxMm), AT),
        Optional.of(pa(pa)),
        Optional.of(pa(pa)));
  }

  static <T> Named<T> named(Map<String, T> values) {
    Map<String, Named.Item<T>> items = new LinkedHashMap<>();
    values.forEach((name, value) -> items.put(name, new Named.Item<>(text(name), value)));
    return new Named<>(items);
  }

  static Length mm(double mm) {
    return new Length(mm / 1000, Unit.MILLIMETRE, AT);
  }

  static Offset offset(double mm) {
    return new Offset(mm / 1000, Unit.MILLIMETRE, AT);
  }

  static Pressure pa(double pa) {
    return new Pressure(pa, Unit.of("Pa", Dimension.PRESSURE, 1), AT);
  }

  static Slope degrees(double degrees) {
    return new Slope(Math.toRadians(degrees), Unit.of("deg", Dimension.ANGLE, 1), AT);
  }

  static Size size(double alongMm, double upMm) {
    return new Size(mm(alongMm), mm(upMm), AT);
  }

  static Spot spot(double alongMm, double upMm) {
    return new Spot(offset(alongMm), offset(upMm), AT);
  }

  static Count count(int value) {
    return new Count(value, AT);
  }

  static Text text(String value) {
    return new Text(value, AT);
  }

  static <E extends Enum<E>> Choice<E> choice(E value) {
    return new Choice<>(value, AT);
  }
}
