package clampwise.catalogue;

import clampwise.job.Attach;
import clampwise.job.Bonding;
import clampwise.job.Field;
import clampwise.job.Fire;
import clampwise.job.Install;
import clampwise.job.Job;
import clampwise.job.Loads;
import clampwise.job.Named;
import clampwise.job.Panel;
import clampwise.job.Parts;
import clampwise.job.Plane;
import clampwise.job.Shape;
import clampwise.job.Survey;
import clampwise.job.Takeoff;
import clampwise.job.Text;
import clampwise.job.Unreadable;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.List;
import java.util.Optional;

/** Finds names in a job that name nothing: neither in the job nor in the catalogue. */
public final class References {

  private final Job job;
  private final ProfileNames profiles;
  private final Names panels;
  private final Names planes;
  private final Names fields;
  private final Names modules;
  private final Names attachments;
  private final Names midClamps;
  private final Names endClamps;
  private final Names jumpers;
  private final Names lugs;
  private final Names wireClips;
  private final ListedNames listed = new ListedNames();

  private References(Job job, Catalogue catalogue, Problems problems) {
    this.job = job;
    this.profiles = new ProfileNames(catalogue.with(job).parts());
    this.panels = sectionNames("roof covering", "panels", job.panels(), problems);
    this.planes = sectionNames("roof plane", "planes", job.planes(), problems);
    this.fields = sectionNames("field", "fields", job.fields(), problems);
    this.modules = Names.of("module type", problems).with(job.modules()).with(catalogue.modules());
    this.attachments = Names.of("seam clamp or rib bracket", problems);
    this.midClamps = Names.of("mid clamp", problems);
    this.endClamps = Names.of("end clamp", problems);
    this.jumpers = Names.of("bonding jumper", problems);
    this.lugs = Names.of("grounding lug", problems);
    this.wireClips = Names.of("wire clip", problems);
    job.parts().ifPresent(this::know);
    know(catalogue.parts());
  }

  /** The names of a section, which may stand under an unknown key. */
  private Names sectionNames(String kind, String key, Named<?> section, Problems problems) {
    Unreadable lost = job.unreadable();
    return Names.of(kind, problems).with(section).unless(lost.holds(key) || lost.hasSection());
  }

  /**
   * Reports every dangling name of a job, with the known name nearest to it.
   *
   * @return the job; what stands under a misspelt name could not be read
   */
  public static Job check(Job job, Catalogue catalogue, Problems problems) {
    References references = new References(job, catalogue, problems);
    references.check();
    ElectricalNames.check(job, catalogue, problems);
    EditionNames.check(job, problems);
    return references.listed.without(job);
  }

  private void know(Parts parts) {
    attachments.with(parts.seamClamps()).with(parts.ribBrackets());
    midClamps.with(parts.midClamps());
    endClamps.with(parts.endClamps());
    jumpers.with(parts.jumpers());
    lugs.with(parts.lugs());
    wireClips.with(parts.wireClips());
  }

  private void check() {
    job.panels().all().forEach(panel -> check(panel.value()));
    job.planes().all().forEach(plane -> check(plane.value()));
    job.fields().all().forEach(field -> check(field.value()));
    job.bonding().ifPresent(this::check);
    job.loads()
        .flatMap(Loads::snow)
        .flatMap(Loads.Snow::higherRoof)
        .map(Loads.HigherRoof::beside)
        .ifPresent(planes::require);
    job.fire().ifPresent(this::check);
    job.takeoff().ifPresent(this::check);
    job.install().ifPresent(this::check);
    job.survey().flatMap(Survey::photos).ifPresent(this::checkPhotos);
  }

  private void check(Takeoff takeoff) {
    Names ordered = Names.union("part or module type", List.of(modules, parts()));
    listed.check(ordered, takeoff.partsList(), "takeoff", "parts-list");
  }

  private void check(Install install) {
    listed.check(fields, install.squareness(), "install", "squareness");
    Names parts = parts();
    listed.check(parts, install.torques(), "install", "torques");
    listed.check(parts, install.torqueLog(), "install", "torque-log");
  }

  private Names parts() {
    return Names.union(
        "part", List.of(attachments, midClamps, endClamps, jumpers, lugs, wireClips));
  }

  private void checkPhotos(List<Text> photos) {
    Names keys = panelKeys();
    photos.forEach(key -> listed.check(keys, key, "survey", "photos"));
  }

  private Names panelKeys() {
    return Names.of("key of a panel", Shape.of(Panel.class).byKey().keySet(), panels.problems());
  }

  private void check(Fire fire) {
    fire.streetSide().forEach(planes::require);
    for (Fire.Adjacent pair : fire.adjacent()) {
      planes.require(pair.plane());
      planes.require(pair.to());
    }
    fire.escapeOpenings().all().forEach(opening -> planes.require(opening.value().plane()));
  }

  private void check(Panel panel) {
    panelKeys().require(panel.assumed());
    profiles.meant(panel).ifPresent(near -> misspelt(panel.profile().orElseThrow(), near));
  }

  private void misspelt(Text profile, String near) {
    String found = "no part made for a profile named \"" + profile + "\"";
    Problem problem =
        new Problem(profile.at(), found, "a profile that a part is made for", Optional.of(near));
    panels.problems().add(problem);
  }

  private void check(Plane plane) {
    panels.require(plane.panel());
  }

  private void check(Field field) {
    planes.require(field.plane());
    modules.require(field.module());
    attachments.require(field.attachment());
    midClamps.require(field.midClamp());
    endClamps.require(field.endClamp());
    field.attach().ifPresent(attach -> attach.points().forEach(this::check));
    field.otherModules().all().stream().map(Named.Item::value).forEach(modules::require);
  }

  private void check(Attach.Point point) {
    attachments.require(point.part());
    point
        .clamp()
        .ifPresent(Names.union("mid or end clamp", List.of(midClamps, endClamps))::require);
  }

  private Names bonds() {
    return Names.union(
        "mid clamp, bonding jumper or grounding lug", List.of(midClamps, jumpers, lugs));
  }

  private void check(Bonding bonding) {
    jumpers.require(bonding.jumper());
    lugs.require(bonding.lug());
    if (!bonding.reused().isEmpty()) {
      bonds().require(bonding.reused());
    }
    for (Bonding.Jumper jumper : bonding.jumpers()) {
      fields.require(jumper.field());
      jumpers.require(jumper.part());
    }
    bonding.lugs().stream().map(Bonding.Lug::part).forEach((Optional<Text> l) -> lugs.require(l));
  }
}
