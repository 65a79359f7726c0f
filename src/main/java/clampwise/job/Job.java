package clampwise.job;

import clampwise.source.Span;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One layout as the designer wrote it. Components that are neither optional nor a list must be
 * written; everything else may be left out, and the checks that need it are then not checked.
 */
public record Job(
    @Doc("What this job is called on the drawings.") Text job,
    @Doc("Revision of the drawings this file describes.") Optional<Text> revision,
    @Doc("Units of numbers written without one.") Optional<DefaultUnits> units,
    @Doc("Where the building stands and which codes hold there.") Optional<Site> site,
    @Doc("How loads are taken where the code leaves it open.") Optional<Loads> loads,
    @Doc("The building that carries the roof.") Optional<Building> building,
    @Doc("Roof coverings, by name.") Named<Panel> panels,
    @Doc("Roof planes, by name.") Named<Plane> planes,
    @Doc("Module types written out in the job, by name.") Named<ModuleType> modules,
    @Doc("Parts written out in the job; they go before parts of the catalogue.")
        Optional<Parts> parts,
    @Doc("Fields of modules, by name.") Named<Field> fields,
    @Doc("Bonding of the frames to ground.") Optional<Bonding> bonding,
    @Doc("Strings, conductors and protection.") Optional<Electrical> electrical,
    @Doc("What the drawings state, to be compared with what is computed.") Optional<Claims> claims,
    @Doc("What was measured on the roof.") Optional<Survey> survey,
    @Doc("What the fire code needs to know.") Optional<Fire> fire,
    @Doc("Documents of the package that is handed in.") Optional<Documents> documents,
    @Doc("How the array is set, tightened and looked after.") Optional<Install> install,
    @Doc("Parts list, crew time and freight, and what a take-off needs beside the drawing.")
        Optional<Takeoff> takeoff,
    @Doc("State of the roof, and what meets it.") Optional<Roof> roof,
    Unreadable unreadable) {

  /**
   * Where something is written, or would be: at the last key of its path that is written, else at
   * the name of the job.
   */
  public Span at(List<String> path) {
    return unreadable.keys().lastOf(path).orElse(job.at());
  }

  /** The same of a path written out. */
  public Span at(String... path) {
    return at(List.of(path));
  }

  /** The job with more values that could not be read: keys from its root down to each. */
  public Job without(Set<List<String>> lost) {
    return lost.isEmpty() ? this : without(unreadable.and(lost));
  }

  Job without(Unreadable lost) {
    return new Job(
        job,
        revision,
        units,
        site,
        loads,
        building,
        panels,
        planes,
        modules,
        parts,
        fields,
        bonding,
        electrical,
        claims,
        survey,
        fire,
        documents,
        install,
        takeoff,
        roof,
        lost);
  }
}
