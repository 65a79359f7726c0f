package clampwise.takeoff;

import clampwise.calc.takeoff.RailRun;
import java.util.List;

/**
 * The same modules on rails, by stated rules, without spares.
 *
 * @param runs rails under modules that stand side by side, with what they stand on
 * @param lugsPerRun grounding lugs of each run
 */
public record Railed(List<OnRails> runs, int lugsPerRun) {

  /**
   * A run of rails.
   *
   * @param attachment what holds it to the roof
   */
  public record OnRails(RailRun run, Part attachment) {}

  /** What holds the rails to the roof. */
  public int attachments() {
    return runs.stream().mapToInt(each -> each.run().attachments()).sum();
  }

  /** Those of them that are no rib brackets. */
  int seamClamps() {
    return runs.stream()
        .filter(each -> each.attachment().kind() != PartKind.RIB_BRACKET)
        .mapToInt(each -> each.run().attachments())
        .sum();
  }

  /** Length of all rails [m]. */
  public double railM() {
    return runs.stream().mapToDouble(each -> each.run().rails() * each.run().railM()).sum();
  }

  /** Pieces of rail as delivered. */
  public int pieces() {
    return runs.stream().mapToInt(each -> each.run().pieces()).sum();
  }

  /** Splices between pieces of rail. */
  public int splices() {
    return runs.stream().mapToInt(each -> each.run().splices()).sum();
  }

  /** Clamps between two modules. */
  public int midClamps() {
    return runs.stream().mapToInt(each -> each.run().midClamps()).sum();
  }

  /** Clamps at the ends of rows. */
  public int endClamps() {
    return runs.stream().mapToInt(each -> each.run().endClamps()).sum();
  }

  /** Grounding lugs. */
  public int lugs() {
    return runs.size() * lugsPerRun;
  }
}
