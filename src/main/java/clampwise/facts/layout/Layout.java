package clampwise.facts.layout;

import clampwise.catalogue.Catalogue;
import clampwise.job.Job;
import java.util.List;

/** The job laid out in space: planes with their seams and zones, fields with their modules. */
public record Layout(Job job, Catalogue catalogue, List<PlaneLayout> planes) {

  /** All fields of all planes. */
  public List<FieldLayout> fields() {
    return planes.stream().flatMap(plane -> plane.fields().stream()).toList();
  }
}
