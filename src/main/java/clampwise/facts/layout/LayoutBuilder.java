package clampwise.facts.layout;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.Limits;
import clampwise.job.Job;
import clampwise.source.Problems;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Lays a job out in space. */
public final class LayoutBuilder {

  private final Limits limits;

  /** A builder that takes what codes and practice say from the limits. */
  public LayoutBuilder(Limits limits) {
    this.limits = limits;
  }

  /** The layout of a job; what cannot be placed as written is added to the problems. */
  public Layout build(Job job, Catalogue catalogue, Problems problems) {
    PlaneBuilder builder =
        new PlaneBuilder(job, catalogue.codes(), new PartFinder(job, catalogue, limits), problems);
    List<PlaneLayout> planes = job.planes().all().stream().map(builder::build).toList();
    Set<String> incomplete = new TreeSet<>(job.fields().unreadable());
    incomplete.addAll(job.fields().names());
    incomplete.removeAll(builder.complete());
    return new Layout(job, catalogue, planes, incomplete);
  }
}
