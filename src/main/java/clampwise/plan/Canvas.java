package clampwise.plan;

import clampwise.plan.Drawn.Anchor;
import clampwise.plan.Drawn.Run;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** A sheet under way: layers in the order in which they are begun. */
final class Canvas {

  private final Map<String, List<Drawn>> layers = new LinkedHashMap<>();
  private final Set<Style> used = EnumSet.noneOf(Style.class);
  private List<Drawn> layer = new ArrayList<>();

  /** What follows belongs to this layer. */
  void layer(String word) {
    layer = layers.computeIfAbsent(word, unseen -> new ArrayList<>());
  }

  void add(Drawn drawn) {
    used.add(drawn.style());
    layer.add(drawn);
  }

  /** Lines of a shape of the roof; nothing where it is empty. */
  void shape(Style style, Geometry shape, Frame frame) {
    shape(style, shape, frame, About.NOTHING);
  }

  void shape(Style style, Geometry shape, Frame frame, About about) {
    runs(style, frame.runs(shape), about);
  }

  void runs(Style style, List<Run> runs, About about) {
    if (!runs.isEmpty()) {
      add(new Drawn.Lines(style, runs, about));
    }
  }

  void words(Style style, Point at, String text) {
    add(Drawn.words(style, at, text));
  }

  void centred(Style style, Point at, String text) {
    add(Drawn.centred(style, at, text));
  }

  void turned(Style style, Point at, String text, double turnDeg) {
    add(new Drawn.Words(style, at, text, Anchor.MIDDLE, turnDeg, About.NOTHING));
  }

  void line(Style style, Point from, Point to) {
    add(Drawn.line(style, from, to));
  }

  /** The room that the words take that have been written so far [mm]. */
  List<Envelope> written() {
    List<Envelope> boxes = new ArrayList<>();
    for (List<Drawn> drawn : layers.values()) {
      for (Drawn one : drawn) {
        if (one instanceof Drawn.Words words) {
          boxes.add(Letters.box(words));
        }
      }
    }
    return boxes;
  }

  /** What has been drawn so far, in the order of the styles. */
  Set<Style> used() {
    return used;
  }

  /** The layers on which something is drawn. */
  List<Layer> layers() {
    List<Layer> all = new ArrayList<>();
    layers.forEach(
        (word, drawn) -> {
          if (!drawn.isEmpty()) {
            all.add(new Layer(word, List.copyOf(drawn)));
          }
        });
    return all;
  }
}
