package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.SeamLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * A seam from one end of its panels to the other, with its attachments.
 *
 * @param part which stretch between end laps, counted up the slope from 1
 * @param parts how many stretches the seam has
 * @param fromM lower end up the slope [m]
 * @param toM upper end up the slope [m]
 */
record SeamRun(SeamLine seam, int part, int parts, double fromM, double toM, List<Held> held) {

  private static final Comparator<SeamRun> LEFT_TO_RIGHT =
      Comparator.comparingDouble((SeamRun run) -> run.seam.alongM())
          .thenComparingInt(run -> run.seam.number())
          .thenComparingDouble(SeamRun::fromM);

  /** An attachment with the field that it belongs to. */
  record Held(Attachment attachment, LoadedField field) {}

  /** An attachment with what each combination brings to it. */
  record Pull(Attachment attachment, LoadedField field, List<Demands.Force> forces) {}

  /** All seams of a plane that have attachments, left to right. */
  static List<SeamRun> of(PlaneLoads plane, List<Double> lapsM) {
    TreeMap<SeamRun, SeamRun> runs = new TreeMap<>(LEFT_TO_RIGHT);
    for (LoadedField field : plane.fields()) {
      for (Attachment attachment : field.field().attachments()) {
        attachment
            .seam()
            .map(seam -> of(seam, attachment.upM(), lapsM))
            .map(run -> runs.computeIfAbsent(run, same -> run))
            .ifPresent(run -> run.held.add(new Held(attachment, field)));
      }
    }
    return List.copyOf(runs.values());
  }

  /** The stretches of a seam as if nothing were attached to it. */
  static List<SeamRun> bare(SeamLine seam, List<Double> lapsM) {
    List<SeamRun> runs = new ArrayList<>();
    double upM = seam.fromUpM();
    while (upM < seam.toUpM()) {
      SeamRun run = of(seam, upM, lapsM);
      runs.add(run);
      upM = run.toM;
    }
    return runs;
  }

  private static SeamRun of(SeamLine seam, double upM, List<Double> lapsM) {
    double fromM = seam.fromUpM();
    double toM = seam.toUpM();
    int part = 1;
    int parts = 1;
    for (double lapM : lapsM) {
      if (lapM > seam.fromUpM() && lapM < seam.toUpM()) {
        parts++;
        part += lapM <= upM ? 1 : 0;
        fromM = lapM <= upM ? lapM : fromM;
        toM = lapM > upM ? Math.min(toM, lapM) : toM;
      }
    }
    return new SeamRun(seam, part, parts, fromM, toM, new ArrayList<>());
  }

  /** Its name on the drawing. */
  String name() {
    return seam.name() + (parts > 1 ? " run " + part : "");
  }

  double lengthM() {
    return toM - fromM;
  }

  /** Supports of the plane that lie under it, both ends included. */
  double[] supportsM(List<Double> planeM) {
    return planeM.stream().mapToDouble(m -> m).filter(m -> m >= fromM && m <= toM).toArray();
  }

  /** Its attachments with their forces, or why one of them is not known. */
  Outcome<List<Pull>> pulls() {
    List<Pull> pulls = new ArrayList<>(held.size());
    for (Held each : held) {
      Outcome<List<Demands.Force>> forces = each.field.forces(each.attachment);
      if (forces instanceof NotApplicable<List<Demands.Force>> none) {
        return new NotApplicable<>(none.reason());
      }
      forces.result().ifPresent(known -> pulls.add(new Pull(each.attachment, each.field, known)));
    }
    return new Result<>(pulls);
  }
}
