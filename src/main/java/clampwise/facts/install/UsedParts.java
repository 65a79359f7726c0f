package clampwise.facts.install;

import clampwise.catalogue.Catalogue;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.StandIns;
import clampwise.job.Bonding;
import clampwise.job.BondingPart;
import clampwise.job.Install.Joint;
import clampwise.job.Job;
import clampwise.job.ModuleClamp;
import clampwise.job.Named;
import clampwise.job.Parts;
import clampwise.job.SeamClamp;
import clampwise.job.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Finds the parts of a layout whose screws are tightened to a torque. */
final class UsedParts {

  private final Parts parts;
  private final List<UsedPart> found = new ArrayList<>();

  private UsedParts(Parts parts) {
    this.parts = parts;
  }

  /** All of them, each once: seam clamps, mid and end clamps, jumpers, lugs. */
  static List<UsedPart> of(SiteWork work) {
    Job job = work.layout().job();
    Catalogue catalogue = work.layout().catalogue().with(job);
    UsedParts used = new UsedParts(catalogue.parts());
    Set<String> names = names(work.layout().fields());
    names.forEach(used::seamClamp);
    names.forEach(used::midClamp);
    names.forEach(used::endClamp);
    job.bonding().ifPresent(used::bonding);
    return used.found;
  }

  /** The parts of a sheet or log that stand in place of those that are used. */
  static StandIns standIns(SiteWork work, List<UsedPart> used, Named<?> listed) {
    return StandIns.of(work.layout(), shelves(used), shelves(work, listed.names()));
  }

  private static Map<String, String> shelves(SiteWork work, Set<String> names) {
    Parts parts = work.layout().catalogue().with(work.layout().job()).parts();
    UsedParts listed = new UsedParts(parts);
    for (String name : names) {
      listed.seamClamp(name);
      listed.midClamp(name);
      listed.endClamp(name);
      listed.bonding(name, parts.jumpers().find(name), "jumper");
      listed.bonding(name, parts.lugs().find(name), "lug");
    }
    return shelves(listed.found);
  }

  private static Map<String, String> shelves(List<UsedPart> all) {
    Map<String, String> shelves = new TreeMap<>();
    all.forEach(part -> shelves.put(part.name(), part.shelf()));
    return shelves;
  }

  private static Set<String> names(List<FieldLayout> fields) {
    Set<String> names = new TreeSet<>();
    for (FieldLayout field : fields) {
      add(field.field().attachment(), names);
      add(field.field().midClamp(), names);
      add(field.field().endClamp(), names);
      for (Attachment attachment : field.attachments()) {
        add(attachment.part(), names);
        add(attachment.clamp(), names);
      }
    }
    return names;
  }

  private static void add(Optional<Text> name, Set<String> names) {
    if (name.isPresent()) {
      names.add(name.get().value());
    }
  }

  private void seamClamp(String name) {
    Optional<SeamClamp> clamp = parts.seamClamps().find(name);
    if (clamp.isPresent()) {
      String word = "seam clamp " + name;
      found.add(new UsedPart(name, word, "seam-clamps", Joint.SET_SCREWS, clamp.get().torque()));
    }
  }

  private void midClamp(String name) {
    moduleClamp(name, parts.midClamps().find(name), "mid");
  }

  private void endClamp(String name) {
    moduleClamp(name, parts.endClamps().find(name), "end");
  }

  private void moduleClamp(String name, Optional<ModuleClamp> clamp, String kind) {
    if (clamp.isPresent()) {
      String word = kind + " clamp " + name;
      String shelf = kind + "-clamps";
      found.add(new UsedPart(name, word, shelf, Joint.MODULE_CLAMPS, clamp.get().torque()));
    }
  }

  private void bonding(Bonding bonding) {
    Set<String> jumpers = new TreeSet<>();
    Set<String> lugs = new TreeSet<>();
    bonding.jumpers().forEach(jumper -> add(jumper.part().or(bonding::jumper), jumpers));
    bonding.lugs().forEach(lug -> add(lug.part().or(bonding::lug), lugs));
    jumpers.forEach(name -> bonding(name, parts.jumpers().find(name), "jumper"));
    lugs.forEach(name -> bonding(name, parts.lugs().find(name), "lug"));
  }

  private void bonding(String name, Optional<BondingPart> part, String kind) {
    if (part.isPresent()) {
      String word = kind + " " + name;
      found.add(new UsedPart(name, word, kind + "s", Joint.BONDING_PARTS, part.get().torque()));
    }
  }
}
