package clampwise.facts.layout;

import clampwise.job.Panel;
import clampwise.job.Plane;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/**
 * A roof plane in its own axes [m].
 *
 * @param name its name in the job
 * @param plane what the designer wrote
 * @param panelName name of its covering
 * @param panel its covering, if the name is known
 * @param outline its outline, if one is given
 * @param edges edges of the outline in order
 * @param seams seams, structural ribs or crests, left to right
 * @param supports purlin or clip lines: distances up the slope [m], ascending
 * @param endLapsM end laps: distances up the slope [m], ascending
 * @param zones wind zones on this plane, the more severe before the milder; empty if unknown
 * @param zonesUnknown why the wind zones are not known, if they are not
 * @param obstacles obstructions with their keep-clear areas
 * @param fields fields on this plane
 * @param reading why parts of it are not known, where they are not
 */
public record PlaneLayout(
    String name,
    Plane plane,
    String panelName,
    Optional<Panel> panel,
    Optional<Polygon> outline,
    List<PlaneEdge> edges,
    List<SeamLine> seams,
    List<Double> supports,
    List<Double> endLapsM,
    List<ZoneArea> zones,
    Optional<String> zonesUnknown,
    List<Obstacle> obstacles,
    List<FieldLayout> fields,
    PlaneReading reading) {}
