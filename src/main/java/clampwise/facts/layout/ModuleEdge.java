package clampwise.facts.layout;

import clampwise.facts.layout.Grip.Edge;
import java.util.List;

/**
 * One supported edge of one module with the attachments that hold it, left to right.
 *
 * @param attachments left to right
 */
public record ModuleEdge(PlacedModule module, Edge edge, List<Attachment> attachments) {

  /** Where this edge lies up the slope [m]. */
  public double upM() {
    return edge == Edge.LOWER ? module.bottomM() : module.topM();
  }
}
