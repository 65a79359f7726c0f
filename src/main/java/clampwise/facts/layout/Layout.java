package clampwise.facts.layout;

import clampwise.catalogue.Catalogue;
import clampwise.job.Job;
import java.util.List;
import java.util.Set;

/**
 * The job laid out in space: planes with their seams and zones, fields with their modules.
 *
 * @param incomplete names of fields that could not be read or laid out as written
 */
public record Layout(
    Job job, Catalogue catalogue, List<PlaneLayout> planes, Set<String> incomplete) {

  /** All fields of all planes. */
  public List<FieldLayout> fields() {
    return planes.stream().flatMap(plane -> plane.fields().stream()).toList();
  }
}
