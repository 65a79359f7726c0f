package clampwise.plan;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import clampwise.plan.Drawn.Run;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;

/** Modules with their names, the lines they are held on, and the attachments. */
final class ArrayDrawing {

  private static final double LEAST_FOR_ATTACHMENTS_MM = 3;
  private static final double LEAST_FOR_NAMES_MM = 1.8;
  private static final double ATTACHMENT_MM = 0.55;

  private final Frame frame;
  private final Canvas canvas;
  private final ModuleWords words;
  private final boolean each;

  /**
   * A drawing of modules.
   *
   * @param each whether each module is a mark of its own
   */
  ArrayDrawing(Frame frame, Canvas canvas, ModuleWords words, boolean each) {
    this.frame = frame;
    this.canvas = canvas;
    this.words = words;
    this.each = each;
  }

  void modules(FieldLayout field) {
    canvas.layer("modules");
    if (each) {
      field.modules().forEach(this::module);
    } else {
      List<Run> runs = field.modules().stream().map(this::box).toList();
      canvas.runs(Style.MODULES, runs, About.NOTHING);
    }
  }

  /** Names are written last, so that no line of a seam runs through them unseen. */
  void names(FieldLayout field) {
    canvas.layer("names");
    if (each) {
      field.modules().forEach(this::name);
    }
    Envelope extent = Spots.extent(field);
    Point corner = frame.at(extent.getMinX(), extent.getMaxY()).plus(0.4, -0.9);
    double roomMm = Math.max(frame.mm(extent.getWidth()), 20);
    String text = Letters.fitted("Field " + field.name(), Style.HEADING, roomMm);
    canvas.words(Style.HEADING, corner, text);
  }

  private void module(PlacedModule module) {
    About about = About.module(module.name(), words.of(module));
    boolean speck = frame.mm(module.upM()) < LEAST_FOR_ATTACHMENTS_MM;
    canvas.runs(speck ? Style.MODULES : Style.MODULE, List.of(box(module)), about);
  }

  private Run box(PlacedModule module) {
    return new Run(
        List.of(
            frame.at(module.leftM(), module.topM()),
            frame.at(module.rightM(), module.topM()),
            frame.at(module.rightM(), module.bottomM()),
            frame.at(module.leftM(), module.bottomM())),
        true);
  }

  private void name(PlacedModule module) {
    String name = "R" + module.row() + "C" + module.column();
    boolean fits = Letters.widthMm(name, Style.MODULE_TEXT) < frame.mm(module.alongM()) - 0.6;
    if (fits && frame.mm(module.upM()) > LEAST_FOR_NAMES_MM) {
      Point middle =
          frame.at((module.leftM() + module.rightM()) / 2, (module.bottomM() + module.topM()) / 2);
      canvas.centred(Style.MODULE_TEXT, middle.plus(0, 0.65), name);
    }
  }

  void attachments(FieldLayout field) {
    if (field.modules().isEmpty() || narrowestMm(field) < LEAST_FOR_ATTACHMENTS_MM) {
      return;
    }
    canvas.layer("attachments");
    Envelope extent = Spots.extent(field);
    List<Run> lines = new ArrayList<>();
    for (double upM : field.lines()) {
      Point left = frame.at(extent.getMinX(), upM).plus(-1.5, 0);
      lines.add(new Run(List.of(left, frame.at(extent.getMaxX(), upM).plus(1.5, 0)), false));
    }
    canvas.runs(Style.CLAMP_LINE, lines, About.NOTHING);
    Map<Attachment.Kind, List<Run>> marks = new EnumMap<>(Attachment.Kind.class);
    for (Attachment attachment : field.attachments()) {
      marks.computeIfAbsent(attachment.kind(), unseen -> new ArrayList<>()).add(mark(attachment));
    }
    marks.forEach((kind, runs) -> canvas.runs(style(kind), runs, About.NOTHING));
  }

  private double narrowestMm(FieldLayout field) {
    PlacedModule first = field.modules().get(0);
    return frame.mm(Math.min(first.alongM(), first.upM()));
  }

  private static Style style(Attachment.Kind kind) {
    return switch (kind) {
      case MID -> Style.ATTACHMENT_MID;
      case END -> Style.ATTACHMENT_END;
      case NONE -> Style.ATTACHMENT_NONE;
    };
  }

  private Run mark(Attachment attachment) {
    Point middle = frame.at(attachment.alongM(), attachment.upM());
    return mark(style(attachment.kind()), middle, ATTACHMENT_MM);
  }

  /** A square; one that holds nothing is a triangle. */
  static Run mark(Style style, Point middle, double half) {
    Point right = middle.plus(half, half);
    Point left = middle.plus(-half, half);
    return style == Style.ATTACHMENT_NONE
        ? new Run(List.of(left, right, middle.plus(0, -half)), true)
        : new Run(List.of(left, right, middle.plus(half, -half), middle.plus(-half, -half)), true);
  }
}
