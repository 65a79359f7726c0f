package clampwise.facts.layout;

import clampwise.job.Obstruction;
import clampwise.source.Span;
import org.locationtech.jts.geom.Polygon;

/**
 * An obstruction on a plane.
 *
 * @param body its own outline
 * @param keepClear its outline grown by its clearance; equal to the body where none is given
 */
public record Obstacle(
    String name, Obstruction obstruction, Polygon body, Polygon keepClear, Span at) {}
