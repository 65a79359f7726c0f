package clampwise.facts.durability;

import clampwise.facts.durability.Contact.Size;
import clampwise.finding.Subject;
import clampwise.job.Bonding;
import clampwise.job.BondingPart;
import clampwise.job.ModuleClamp;
import clampwise.job.SurfaceMetal;
import clampwise.job.Text;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Clamps and lugs on the aluminium of the frames. */
final class FrameContacts {

  private static final Surface FRAME = new Surface(SurfaceMetal.ALUMINIUM, "the frames");

  private final Weathering weathering;
  private final Couples couples;
  private final Unsaid unsaid;

  FrameContacts(Weathering weathering, Couples couples) {
    this.weathering = weathering;
    this.couples = couples;
    this.unsaid = new Unsaid(weathering, "the metal of", "metal");
  }

  void ask() {
    for (ClampInUse clamp : ClampInUse.all(weathering)) {
      clamp(clamp);
    }
    lugs().values().forEach(this::lug);
    unsaid.tell(MetalCouple.class, Subject.of("parts"));
  }

  private void clamp(ClampInUse used) {
    String name = used.name().value();
    Optional<SurfaceMetal> metal =
        used.part().flatMap(ModuleClamp::metal).map(written -> SurfaceMetal.of(written.value()));
    if (metal.isEmpty()) {
      unsaid.add(name, "parts", used.shelf(), name, "metal");
    } else {
      ask(used.name(), new Surface(metal.get(), "clamp " + name), Size.ALIKE);
    }
  }

  private void lug(Text name) {
    Optional<Text> finish =
        weathering.catalogue().parts().lugs().find(name.value()).flatMap(BondingPart::finish);
    Optional<SurfaceMetal> metal = finish.flatMap(text -> metal(text.value()));
    if (metal.isEmpty()) {
      unsaid.add(name.value(), "parts", "lugs", name.value(), "finish");
    } else if (!isAskedElsewhere(metal.get())) {
      ask(name, new Surface(metal.get(), "lug " + name), Size.ALIKE);
    }
  }

  /** Bare copper under a lug is a question of the strings and conductors, if those are given. */
  private boolean isAskedElsewhere(SurfaceMetal metal) {
    return weathering.job().electrical().isPresent()
        && couples.isNever(metal, SurfaceMetal.ALUMINIUM);
  }

  private void ask(Text name, Surface part, Size size) {
    Subject subject = Subject.of("parts").part(name.value()).part("on frames");
    couples.ask(
        new Contact(
            subject, subject, name.at(), part, FRAME, size, false, "a part of aluminium or tinned"),
        false);
  }

  private Map<String, Text> lugs() {
    Map<String, Text> names = new LinkedHashMap<>();
    Optional<Bonding> bonding = weathering.job().bonding();
    for (Bonding.Lug lug : bonding.map(Bonding::lugs).orElse(List.of())) {
      lug.part()
          .or(() -> bonding.flatMap(Bonding::lug))
          .ifPresent(name -> names.putIfAbsent(name.value(), name));
    }
    return names;
  }

  /** The metal that the words of a finish mean. */
  private static Optional<SurfaceMetal> metal(String finish) {
    String words = finish.toLowerCase(Locale.ROOT);
    Map<String, SurfaceMetal> known = new LinkedHashMap<>();
    known.put("tin", SurfaceMetal.TINNED_COPPER);
    known.put("stainless", SurfaceMetal.STAINLESS_STEEL);
    known.put("alumin", SurfaceMetal.ALUMINIUM);
    known.put("copper", SurfaceMetal.COPPER);
    known.put("brass", SurfaceMetal.BRASS);
    known.put("bronze", SurfaceMetal.BRONZE);
    known.put("zinc", SurfaceMetal.GALVANISED_STEEL);
    known.put("galvani", SurfaceMetal.GALVANISED_STEEL);
    return known.entrySet().stream()
        .filter(entry -> words.contains(entry.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }
}
