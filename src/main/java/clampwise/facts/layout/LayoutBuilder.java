package clampwise.facts.layout;

import clampwise.catalogue.Catalogue;
import clampwise.job.Job;
import clampwise.source.Problems;

/** Lays a job out in space. */
public final class LayoutBuilder {

  /** The layout of a job; what cannot be placed as written is added to the problems. */
  public Layout build(Job job, Catalogue catalogue, Problems problems) {
    PlaneBuilder builder = new PlaneBuilder(job, new PartFinder(job, catalogue), problems);
    return new Layout(job, catalogue, job.planes().all().stream().map(builder::build).toList());
  }
}
