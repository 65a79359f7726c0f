package clampwise.facts.clamps;

import clampwise.calc.ClampedEdge;
import clampwise.calc.Interval;
import clampwise.calc.SeamPositions;
import clampwise.calc.Snap;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds how far the modules of a field's rows may shift over the seams. */
public final class SeamWindows {

  private final ZoneSeams seams;

  private SeamWindows(ZoneSeams seams) {
    this.seams = seams;
  }

  /** A row and what each of its modules bears, from left to right. */
  public record Row(String name, List<SeamWindow> windows) {}

  /** The seam windows of one field of a plane. */
  public static SeamWindows of(Layout layout, PlaneLayout plane, FieldLayout field, Limits limits) {
    return new SeamWindows(
        ZoneSeams.of(new FieldCase(layout, plane, field, limits, new Answers())));
  }

  /** Why they are not known, if they are not. */
  public Optional<String> unknown(PlaneLayout plane, FieldLayout field) {
    if (!seams.areKnown()) {
      return Optional.of(plane.reading().seamsUnknown());
    }
    for (PlacedModule module : field.modules()) {
      Optional<String> unusable = seams.unusable(module);
      if (unusable.isPresent()) {
        return unusable;
      }
    }
    return Optional.empty();
  }

  /**
   * All rows of the field.
   *
   * @param reachM shift beyond which nobody asks, for each module of a row [m]
   */
  public List<Row> rows(FieldLayout field, double reachM) {
    List<Row> rows = new ArrayList<>();
    for (ModuleRow row : ModuleRow.of(field)) {
      double farM = reachM * row.modules().size();
      List<SeamWindow> windows = new ArrayList<>();
      for (PlacedModule module : row.modules()) {
        windows.add(new SeamWindow(module, slackM(module, farM)));
      }
      rows.add(new Row(row.name(), List.copyOf(windows)));
    }
    return rows;
  }

  private double slackM(PlacedModule module, double farM) {
    SeamPositions positions = seams.seams(module);
    double leftM = Snap.m(module.leftM());
    Interval range = new Interval(leftM - farM, leftM + farM);
    double bestM = -1;
    for (ClampedEdge edge : seams.edges(module)) {
      for (Interval part : edge.corners(positions, range).parts()) {
        if (part.contains(leftM)) {
          double roomM = Math.min(leftM - part.fromM(), part.toM() - leftM);
          bestM = Math.max(bestM, Snap.m(roomM));
        }
      }
    }
    return bestM < 0 ? Snap.m(farM) : bestM;
  }
}
