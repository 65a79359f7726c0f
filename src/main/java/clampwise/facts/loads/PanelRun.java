package clampwise.facts.loads;

import clampwise.facts.layout.ModuleIndex;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.SeamLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * A panel from one of its ends to the other, between two seams of which at least one has
 * attachments.
 *
 * @param name the seams beside it
 * @param seams those of them that have attachments, with what holds to them
 * @param lengthM its length [m]
 * @param openM length of it that no module covers [m]
 */
record PanelRun(String name, List<SeamRun> seams, double lengthM, double openM) {

  private static final Comparator<Key> UP_AND_RIGHT =
      Comparator.comparingInt(Key::part).thenComparingInt(Key::leftSeam);

  /** The panel right of a seam, in one stretch between end laps. */
  private record Key(int part, int leftSeam) {}

  /**
   * All such panels of a plane.
   *
   * @param lapsM end laps at which panels slide on each other [m]
   */
  static List<PanelRun> of(PlaneLoads plane, List<Double> lapsM, double pitchM) {
    TreeMap<Key, List<SeamRun>> panels = new TreeMap<>(UP_AND_RIGHT);
    for (SeamRun run : SeamRun.of(plane, lapsM)) {
      int number = run.seam().number();
      add(panels, new Key(run.part(), number - 1), run);
      add(panels, new Key(run.part(), number), run);
    }
    ModuleIndex modules = ModuleIndex.of(plane.plane());
    int last = plane.plane().seams().stream().mapToInt(SeamLine::number).max().orElse(0);
    return panels.entrySet().stream()
        .map(panel -> of(panel.getKey(), last, panel.getValue(), modules, pitchM))
        .toList();
  }

  private static void add(TreeMap<Key, List<SeamRun>> panels, Key key, SeamRun run) {
    panels.computeIfAbsent(key, same -> new ArrayList<>(2)).add(run);
  }

  private static PanelRun of(
      Key key, int last, List<SeamRun> seams, ModuleIndex modules, double pitchM) {
    SeamRun run = seams.get(0);
    boolean rightOfIt = run.seam().number() == key.leftSeam;
    double middleM = run.seam().alongM() + (rightOfIt ? pitchM : -pitchM) / 2;
    double coveredM = coveredM(modules.near(middleM, run.fromM(), middleM, run.toM()), run);
    String name = name(key.leftSeam, last) + (run.parts() > 1 ? ", run " + key.part : "");
    return new PanelRun(name, seams, run.lengthM(), Math.max(0, run.lengthM() - coveredM));
  }

  private static double coveredM(List<PlacedModule> modules, SeamRun run) {
    double sumM = 0;
    for (PlacedModule module : modules) {
      double fromM = Math.max(module.bottomM(), run.fromM());
      sumM += Math.max(0, Math.min(module.topM(), run.toM()) - fromM);
    }
    return sumM;
  }

  private static String name(int leftSeam, int last) {
    if (leftSeam == 0) {
      return "panel left of seam 1";
    }
    return leftSeam >= last
        ? "panel right of seam " + leftSeam
        : "panel between seams " + leftSeam + " and " + (leftSeam + 1);
  }
}
