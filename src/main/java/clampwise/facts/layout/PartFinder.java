package clampwise.facts.layout;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.Limits;
import clampwise.job.Job;
import clampwise.job.ModuleClamp;
import clampwise.job.ModuleType;
import clampwise.job.Named;
import clampwise.job.Parts;
import clampwise.job.RoofAttachment;
import clampwise.job.Text;
import java.util.Optional;
import java.util.function.Function;

/** Finds parts and module types by name: those of the job before those of the catalogue. */
record PartFinder(Job job, Catalogue catalogue, Limits limits) {

  EdgeRules edgeRules() {
    return new EdgeRules(
        limits.get("test-over-design-load").si(), limits.get("overhang-share-of-span-most").si());
  }

  Optional<ModuleType> module(Text name) {
    return job.modules().find(name.value()).or(() -> catalogue.modules().find(name.value()));
  }

  Optional<RoofAttachment> attachment(Optional<Text> name) {
    Optional<RoofAttachment> clamp = part(name, Parts::seamClamps).map(RoofAttachment.class::cast);
    return clamp.or(() -> part(name, Parts::ribBrackets));
  }

  Optional<ModuleClamp> midClamp(Optional<Text> name) {
    return part(name, Parts::midClamps);
  }

  Optional<ModuleClamp> endClamp(Optional<Text> name) {
    return part(name, Parts::endClamps);
  }

  private <T> Optional<T> part(Optional<Text> name, Function<Parts, Named<T>> kind) {
    return name.flatMap(
        given ->
            job.parts()
                .flatMap(parts -> kind.apply(parts).find(given.value()))
                .or(() -> kind.apply(catalogue.parts()).find(given.value())));
  }
}
