package clampwise.facts.layout;

import clampwise.job.Plane.EdgeKind;
import clampwise.source.Span;
import org.locationtech.jts.geom.LineSegment;

/** One edge of a plane's outline. */
public record PlaneEdge(EdgeKind kind, LineSegment line, Span at) {}
