package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.catalogue.Fits;
import clampwise.catalogue.Fits.Need;
import clampwise.facts.electrical.GroundingSizing.Least;
import clampwise.facts.layout.FieldLayout;
import clampwise.finding.Subject;
import clampwise.job.Bonding;
import clampwise.job.BondingPart;
import clampwise.job.Circuit.Kind;
import clampwise.job.Flag;
import clampwise.job.ModuleClamp;
import clampwise.job.ModuleElectrics;
import clampwise.job.Named;
import clampwise.job.Parts;
import clampwise.job.Quantity.Current;
import clampwise.job.Quantity.WireSize;
import clampwise.job.Text;
import clampwise.units.QuantityPrint;
import clampwise.units.Units;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Holds the fuse that bonding parts were tested for, and jumpers, against what they may carry. */
record BondFuses(Wiring wiring) {

  /** A module with its largest series fuse. */
  private record Fused(String module, double fuseA) {}

  /** A kind of part, with what its parts were tested for. */
  private record Kindred<T>(
      String kind,
      String shelf,
      Named<T> parts,
      Function<T, Optional<Current>> rated,
      Function<T, Optional<Flag>> bonds) {}

  static void ask(Wiring wiring) {
    new BondFuses(wiring).ask();
  }

  private void ask() {
    Kindred<BondingPart> lugs =
        new Kindred<>(
            "lug", "lugs", parts().lugs(), BondingPart::seriesFuseAtMost, BondingPart::bonding);
    Kindred<BondingPart> jumpers =
        new Kindred<>(
            "jumper",
            "jumpers",
            parts().jumpers(),
            BondingPart::seriesFuseAtMost,
            BondingPart::bonding);
    Kindred<ModuleClamp> clamps =
        new Kindred<>(
            "mid clamp",
            "mid-clamps",
            parts().midClamps(),
            ModuleClamp::seriesFuseAtMost,
            ModuleClamp::bonding);
    LugQuestions.names(wiring).forEach(name -> ask(lugs, name));
    jumperNames().forEach(name -> ask(jumpers, name));
    clampNames().forEach(name -> ask(clamps, name));
    jumperNames().forEach(this::askWire);
  }

  private Parts parts() {
    return wiring.catalogue().parts();
  }

  private Collection<Text> jumperNames() {
    Map<String, Text> names = new LinkedHashMap<>();
    Optional<Bonding> bonding = wiring.job().bonding();
    for (Bonding.Jumper jumper : bonding.map(Bonding::jumpers).orElse(List.of())) {
      jumper
          .part()
          .or(() -> bonding.flatMap(Bonding::jumper))
          .ifPresent(name -> names.putIfAbsent(name.value(), name));
    }
    return names.values();
  }

  private Collection<Text> clampNames() {
    Map<String, Text> names = new LinkedHashMap<>();
    for (FieldLayout field : wiring.layout().fields()) {
      boolean stacked = field.modules().stream().anyMatch(module -> module.row() > 1);
      field
          .field()
          .midClamp()
          .filter(clamp -> stacked)
          .ifPresent(name -> names.putIfAbsent(name.value(), name));
    }
    return names.values();
  }

  private static Subject subject(String kind, Text name) {
    return Wiring.ELECTRICAL.part(kind + " " + name);
  }

  private <T> void ask(Kindred<T> kindred, Text name) {
    Subject subject = subject(kindred.kind, name);
    Optional<Current> rated = kindred.parts.find(name.value()).flatMap(kindred.rated);
    Outcome<Fused> worst = worst();
    if (rated.isEmpty()) {
      String what = "the fuse that " + kindred.kind + " " + name + " was tested for";
      String reason =
          wiring
              .unreadable()
              .missing(what, "parts", kindred.shelf, name.value(), "series-fuse-at-most");
      wiring.missing(BondFuse.class, subject, reason, name.at());
    } else if (worst instanceof NotApplicable<Fused> unknown) {
      wiring.missing(BondFuse.class, subject, unknown.reason(), name.at());
    } else {
      Fused fused = worst.result().orElseThrow();
      wiring
          .answers()
          .add(
              new BondFuse(
                  subject,
                  name.at(),
                  Units.AMPERE,
                  kindred.kind,
                  name.value(),
                  rated.get().a(),
                  fused.module,
                  fused.fuseA,
                  rated.get().a() < fused.fuseA
                      ? fitting(kindred, name, fused.fuseA)
                      : Optional.empty()));
    }
  }

  private <T> Optional<String> fitting(Kindred<T> kindred, Text name, double fuseA) {
    List<Need<T>> needs =
        List.of(
            new Need<>("the frame height", part -> grips(part, name)),
            new Need<>("bonding", part -> kindred.bonds.apply(part).map(Flag::value).orElse(true)),
            new Need<>(
                "the series fuse, " + QuantityPrint.text(fuseA, Units.AMPERE),
                part -> kindred.rated.apply(part).filter(a -> a.a() >= fuseA).isPresent()));
    Fits fits = Fits.of(kindred.parts, needs, part -> 0);
    return Optional.of(fits.without(name.value()).told("another " + kindred.kind));
  }

  /** Whether a clamp in place of another one grips all frames that one has to grip. */
  private <T> boolean grips(T part, Text instead) {
    return !(part instanceof ModuleClamp clamp)
        || wiring.layout().fields().stream()
            .filter(field -> field.field().midClamp().filter(instead::equals).isPresent())
            .flatMap(field -> field.type().frameHeight().stream())
            .allMatch(h -> clamp.frameHeight().map(range -> range.contains(h.m())).orElse(true));
  }

  /** The module of the layout that may have the largest fuse. */
  private Outcome<Fused> worst() {
    List<Fused> all = new ArrayList<>();
    for (FieldLayout field : wiring.layout().fields()) {
      Optional<Current> fuse = field.type().electrical().flatMap(ModuleElectrics::seriesFuseAtMost);
      if (fuse.isEmpty()) {
        return new NotApplicable<>(noFuse(field.typeName()));
      }
      all.add(new Fused(field.typeName(), fuse.get().a()));
    }
    return all.stream()
        .max(Comparator.comparingDouble(Fused::fuseA))
        .<Outcome<Fused>>map(Result::new)
        .orElseGet(() -> new NotApplicable<>("no field could be read and laid out as written"));
  }

  private String noFuse(String module) {
    return wiring
        .unreadable()
        .missing(
            "the largest series fuse of module " + module,
            "modules",
            module,
            "electrical",
            "series-fuse-at-most");
  }

  private void askWire(Text name) {
    Subject subject = subject("jumper", name);
    Optional<WireSize> size = parts().jumpers().find(name.value()).flatMap(BondingPart::size);
    List<CircuitCase> circuits = new ArrayList<>();
    CircuitCase.each(wiring, circuits::add);
    circuits.removeIf(circuit -> !circuit.is(Kind.DC) || circuit.grounding().isEmpty());
    if (!circuits.isEmpty() && size.isEmpty()) {
      String reason =
          wiring
              .unreadable()
              .missing("the size of jumper " + name, "parts", "jumpers", name.value(), "size");
      wiring.missing(JumperWire.class, subject, reason, name.at());
    } else {
      circuits.forEach(circuit -> askWire(name, size.orElseThrow(), circuit));
    }
  }

  private void askWire(Text name, WireSize size, CircuitCase circuit) {
    Subject subject = subject("jumper", name).part("circuit " + circuit.name());
    Outcome<Least> least = new GroundingSizing(circuit, circuit.grounding().orElseThrow()).least();
    if (least instanceof NotApplicable<Least> unknown) {
      wiring.missing(JumperWire.class, subject, unknown.reason(), name.at());
      return;
    }
    double leastM2 = least.result().orElseThrow().m2();
    wiring
        .answers()
        .add(
            new JumperWire(
                subject,
                name.at(),
                size.unit(),
                name.value(),
                circuit.name().value(),
                WireSizes.snapped(size.m2(), leastM2),
                leastM2,
                least.result().map(Least::from),
                size.m2() < leastM2 ? jumpers(name, leastM2) : Optional.empty()));
  }

  private Optional<String> jumpers(Text name, double leastM2) {
    List<Need<BondingPart>> needs =
        List.of(
            new Need<>("bonding", part -> part.bonding().map(Flag::value).orElse(true)),
            new Need<>(
                "the size of the conductor",
                part ->
                    part.size()
                        .filter(own -> WireSizes.snapped(own.m2(), leastM2) >= leastM2)
                        .isPresent()));
    Fits fits = Fits.of(parts().jumpers(), needs, part -> part.size().orElseThrow().m2());
    return Optional.of(fits.without(name.value()).told("another jumper"));
  }
}
