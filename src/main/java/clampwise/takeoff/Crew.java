package clampwise.takeoff;

import clampwise.catalogue.Limits;
import java.util.ArrayList;
import java.util.List;

/**
 * Time of a crew on the roof: practice, by pieces, placement apart from all else.
 *
 * @param tasks in the order of the work
 */
public record Crew(List<Task> tasks) {

  /** The work on modules that are clamped to their attachments. */
  public static Crew of(Counts counts, Limits rules) {
    Crew crew = new Crew(new ArrayList<>());
    crew.addSetUp(rules);
    int brackets = counts.of(PartKind.RIB_BRACKET);
    int others = counts.attachments() - brackets;
    crew.add(CrewPhase.ATTACHMENTS, "seam clamps", others, rules, "seam-clamp-time");
    crew.add(CrewPhase.ATTACHMENTS, "rib brackets", brackets, rules, "rib-bracket-time");
    crew.addModules(counts, rules);
    int clamps = counts.of(PartKind.MID_CLAMP) + counts.of(PartKind.END_CLAMP);
    crew.add(CrewPhase.CLAMPS, "clamps", clamps, rules, "clamp-time");
    crew.add(CrewPhase.BONDING, "jumpers", counts.of(PartKind.JUMPER), rules, "jumper-time");
    crew.addWiring(counts, counts.of(PartKind.LUG), rules);
    return crew;
  }

  /** The same work with rails between modules and attachments. */
  static Crew railed(Railed railed, Counts counts, Limits rules) {
    Crew crew = new Crew(new ArrayList<>());
    crew.addSetUp(rules);
    int clamps = railed.seamClamps();
    int brackets = railed.attachments() - clamps;
    crew.add(CrewPhase.ATTACHMENTS, "seam clamps", clamps, rules, "seam-clamp-time");
    crew.add(CrewPhase.ATTACHMENTS, "rib brackets", brackets, rules, "rib-bracket-time");
    crew.add(CrewPhase.RAILS, "feet", railed.attachments(), rules, "rail-foot-time");
    crew.add(CrewPhase.RAILS, "metres of rail", railed.railM(), rules, "rail-time-of-a-metre");
    crew.add(CrewPhase.RAILS, "splices", railed.splices(), rules, "rail-splice-time");
    crew.addModules(counts, rules);
    int grips = railed.midClamps() + railed.endClamps();
    crew.add(CrewPhase.CLAMPS, "clamps", grips, rules, "clamp-time");
    crew.addWiring(counts, railed.lugs(), rules);
    return crew;
  }

  private void addSetUp(Limits rules) {
    add(CrewPhase.SET_UP, "once a job", 1, rules, "set-up-time");
  }

  private void addModules(Counts counts, Limits rules) {
    add(CrewPhase.PLACEMENT, "modules", counts.of(PartKind.MODULE), rules, "placement-time");
  }

  private void addWiring(Counts counts, int lugs, Limits rules) {
    add(CrewPhase.BONDING, "lugs", lugs, rules, "lug-time");
    add(CrewPhase.WIRING, "modules", counts.of(PartKind.MODULE), rules, "module-wiring-time");
    add(CrewPhase.WIRING, "wire clips", counts.of(PartKind.WIRE_CLIP), rules, "wire-clip-time");
  }

  private void add(CrewPhase phase, String what, double number, Limits rules, String key) {
    if (number > 0) {
      tasks.add(new Task(phase, what, number, rules.get(key).si()));
    }
  }

  /** Time of all phases [s]. */
  public double seconds() {
    return tasks.stream().mapToDouble(Task::seconds).sum();
  }

  /** Time of one phase [s]. */
  public double seconds(CrewPhase phase) {
    return tasks.stream().filter(task -> task.phase() == phase).mapToDouble(Task::seconds).sum();
  }
}
