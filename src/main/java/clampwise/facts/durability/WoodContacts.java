package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.catalogue.SheetCoating;
import clampwise.finding.Subject;
import clampwise.job.Flag;
import clampwise.job.Roof;
import clampwise.job.Roof.Preservative;
import clampwise.job.Roof.TreatedWood;
import clampwise.job.SurfaceMetal;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/** Asks whether wood treated with copper eats the metal on it. */
record WoodContacts(Weathering weathering, Roof roof) {

  private static final double SAME = 1e-9;

  void ask() {
    Optional<List<TreatedWood>> wood = roof.treatedWood();
    if (wood.isEmpty()) {
      String what = "whether metal rests on treated wood";
      missing(subject("treated wood"), weathering.lacks(what, "roof", "treated-wood"));
    } else {
      wood.get().forEach(this::ask);
    }
  }

  private void ask(TreatedWood wood) {
    Subject subject = subject(wood.wood().value());
    boolean zinc = wood.touches().value() == SurfaceMetal.GALVANISED_STEEL;
    if (wood.barrier().isEmpty()) {
      missing(subject, "whether a membrane lies over " + wood.wood() + " is not given (barrier)");
    } else if (zinc && wood.coating().isEmpty()) {
      missing(
          subject, "how much zinc is on what rests on " + wood.wood() + " is not given (coating)");
    } else {
      weathering.add(fact(subject, wood));
    }
  }

  private WoodContact fact(Subject subject, TreatedWood wood) {
    return new WoodContact(
        subject,
        wood.touches().at(),
        Unit.NUMBER,
        wood.wood().value(),
        wood.preservative().toString(),
        Surface.words(wood.touches().value()),
        isCopper(wood.preservative().value()) && isEaten(wood),
        wood.barrier().filter(Flag::value).isPresent(),
        Optional.of(least()));
  }

  private Limit least() {
    return weathering.limit("treated-wood-zinc-least");
  }

  private static boolean isCopper(Preservative preservative) {
    return switch (preservative) {
      case ACQ, CA, CCA -> true;
      case BORATE, NONE -> false;
    };
  }

  private boolean isEaten(TreatedWood wood) {
    return switch (wood.touches().value()) {
      case STEEL, AL_ZN_STEEL, ALUMINIUM, ZINC -> true;
      case GALVANISED_STEEL -> grams(wood) < least().si() - SAME;
      case STAINLESS_STEEL, COPPER, TINNED_COPPER, BRASS, BRONZE, LEAD -> false;
    };
  }

  private double grams(TreatedWood wood) {
    return wood.coating()
        .flatMap(text -> SheetCoating.of(text.value()))
        .flatMap(coating -> coating.gramsPerM2(weathering.metals("zinc-coatings")))
        .orElse(0.0);
  }

  private static Subject subject(String name) {
    return Weathering.ROOF.part(name);
  }

  private void missing(Subject subject, String reason) {
    weathering.missing(WoodContact.class, subject, reason);
  }
}
