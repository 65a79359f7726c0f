package clampwise.facts.layout;

import clampwise.catalogue.Catalogue;
import clampwise.job.Job;
import clampwise.source.Problems;
import java.util.List;

/** Lays a job out in space. */
public final class LayoutBuilder {

  /** The layout of a job; what cannot be placed as written is added to the problems. */
  public Layout build(Job job, Catalogue catalogue, Problems problems) {
    return new Layout(job, catalogue, List.of());
  }
}
