package clampwise.catalogue;

import clampwise.job.Job;
import clampwise.job.ModuleType;
import clampwise.job.Named;
import clampwise.job.Parts;
import clampwise.job.RoofAttachment;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Parts and module types that a job may use by name, and the tables of the codes. */
public record Catalogue(Parts parts, Named<ModuleType> modules, CodeTables codes) {

  /** Parts and module types, with the tables that ship with the program. */
  public Catalogue(Parts parts, Named<ModuleType> modules) {
    this(parts, modules, new CodeTables());
  }

  /** This catalogue with the parts and module types of a job put before its own. */
  public Catalogue with(Job job) {
    Named<ModuleType> both = before(job.modules(), modules);
    return job.parts()
        .map(own -> new Catalogue(before(own, parts), both, codes))
        .orElseGet(() -> new Catalogue(parts, both, codes));
  }

  /** This catalogue for a house that puts limits of its own in place of shipped ones. */
  public Catalogue with(UnaryOperator<Limits> house) {
    return new Catalogue(parts, modules, codes.with(house));
  }

  /** A seam clamp or rib bracket by name. */
  public Optional<RoofAttachment> attachment(String name) {
    Optional<RoofAttachment> clamp = parts.seamClamps().find(name).map(part -> part);
    return clamp.or(() -> parts.ribBrackets().find(name));
  }

  private static Parts before(Parts own, Parts other) {
    return new Parts(
        before(own.seamClamps(), other.seamClamps()),
        before(own.ribBrackets(), other.ribBrackets()),
        before(own.midClamps(), other.midClamps()),
        before(own.endClamps(), other.endClamps()),
        before(own.jumpers(), other.jumpers()),
        before(own.lugs(), other.lugs()),
        before(own.wireClips(), other.wireClips()));
  }

  private static <T> Named<T> before(Named<T> own, Named<T> other) {
    Map<String, Named.Item<T>> items = new LinkedHashMap<>(own.items());
    other.items().forEach(items::putIfAbsent);
    return new Named<>(items);
  }
}
