package clampwise.facts.layout;

import clampwise.job.Field.Orientation;
import clampwise.job.ModuleType;
import clampwise.source.Span;

/**
 * A module at its place on a plane.
 *
 * @param name name on the drawing, unique in the job, such as {@code A.R2C3}
 * @param field name of its field
 * @param row counted up the slope from 1
 * @param column counted along the eave from 1
 * @param typeName name of its module type
 * @param type its module type
 * @param leftM left side [m along]
 * @param bottomM lower side [m up]
 * @param alongM extent along the eave [m]
 * @param upM extent up the slope [m]
 * @param at where the block or column that placed it was written
 */
public record PlacedModule(
    String name,
    String field,
    int row,
    int column,
    String typeName,
    ModuleType type,
    Orientation orientation,
    double leftM,
    double bottomM,
    double alongM,
    double upM,
    Span at) {

  public double rightM() {
    return leftM + alongM;
  }

  public double topM() {
    return bottomM + upM;
  }

  /** Clear distance to another module of the same plane, in a straight line [m]. */
  public double gapM(PlacedModule other) {
    double apartAlongM = Math.max(leftM, other.leftM) - Math.min(rightM(), other.rightM());
    double apartUpM = Math.max(bottomM, other.bottomM) - Math.min(topM(), other.topM());
    return Math.hypot(Math.max(apartAlongM, 0), Math.max(apartUpM, 0));
  }

  /** The side that crosses the seams and is therefore clamped. */
  public ModuleType.Side clampedSide() {
    return orientation == Orientation.LANDSCAPE ? ModuleType.Side.LONG : ModuleType.Side.SHORT;
  }
}
