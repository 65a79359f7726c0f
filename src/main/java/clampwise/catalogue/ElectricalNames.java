package clampwise.catalogue;

import clampwise.job.Circuit;
import clampwise.job.Claims;
import clampwise.job.Electrical;
import clampwise.job.Electrical.PvString;
import clampwise.job.Job;
import clampwise.job.Named;
import clampwise.job.Text;
import clampwise.source.Problems;
import java.util.Optional;

/** Finds names in the electrical part of a job that name nothing. */
final class ElectricalNames {

  private ElectricalNames() {}

  static void check(Job job, Catalogue catalogue, Problems problems) {
    job.electrical().ifPresent(electrical -> check(electrical, job, catalogue, problems));
  }

  private static void check(
      Electrical electrical, Job job, Catalogue catalogue, Problems problems) {
    Catalogue all = catalogue.with(job);
    Names strings = Names.of("string", problems).with(electrical.strings());
    Names fields = Names.of("field", problems).with(job.fields());
    Names modules = Names.of("module type", problems).with(job.modules()).with(all.modules());
    Names clips = Names.of("wire clip", problems).with(all.parts().wireClips());
    job.parts().ifPresent(parts -> clips.with(parts.wireClips()));
    for (Named.Item<PvString> string : electrical.strings().all()) {
      fields.require(string.value().field());
      modules.require(string.value().module());
    }
    electrical.circuits().all().stream()
        .map(Named.Item::value)
        .map(Circuit::string)
        .forEach((Optional<Text> name) -> strings.require(name));
    electrical.cables().ifPresent(cables -> clips.require(cables.clip()));
    job.claims()
        .map(Claims::stringVoltages)
        .ifPresent(c -> c.all().forEach(i -> strings.require(i.name())));
  }
}
