package clampwise.facts.loads;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;

/**
 * The least force that wind uplift brings to a clamp of a line, on the module edge where it is
 * least. Below zero the clamp is pried: it has to push the frame down while others take more than
 * the whole edge.
 *
 * @param field its field
 * @param line number of the line
 * @param module the module whose edge it is
 * @param edge which of its edges
 * @param clamp the clamp with the least force
 * @param other the clamp of that edge with the largest force
 * @param combination the combination with most uplift
 * @param leastN force of the first, away from the roof [N]
 * @param noneN no force at all [N]
 * @param mostN force of the other [N]
 * @param edgeN uplift of the whole edge [N]
 * @param pried how many module edges of the line have such a clamp
 * @param place where a clamp would have to be, in words
 */
public record PriedEdge(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    int line,
    String module,
    String edge,
    String clamp,
    String other,
    String combination,
    double leastN,
    double noneN,
    double mostN,
    double edgeN,
    int pried,
    String place)
    implements Fact {

  @Override
  public String loadCase() {
    return combination;
  }
}
