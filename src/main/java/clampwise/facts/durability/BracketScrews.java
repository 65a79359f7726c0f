package clampwise.facts.durability;

import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.RibBracket;
import clampwise.job.Screws;
import clampwise.job.Screws.Washer;
import clampwise.units.Unit;
import java.util.Optional;

/** Asks where the screws of brackets go in, and whether screws and bracket are sealed. */
final class BracketScrews {

  private final Weathering weathering;
  private final Unsaid places;
  private final Unsaid washers;
  private final Unsaid seals;

  BracketScrews(Weathering weathering) {
    this.weathering = weathering;
    this.places = new Unsaid(weathering, "the place in the profile of the screws of", "screws: in");
    this.washers = new Unsaid(weathering, "the washer under the screws of", "screws: washer");
    this.seals = new Unsaid(weathering, "what seals", "sealed");
  }

  void ask() {
    for (UsedPart used : UsedPart.all(weathering)) {
      if (used.part() instanceof RibBracket bracket) {
        askPlace(used);
        askWasher(used);
        askSeal(used, bracket);
      }
    }
    places.tell(ScrewPlace.class, Subject.of("parts"));
    washers.tell(ScrewWasher.class, Subject.of("parts"));
    seals.tell(BracketSeal.class, Subject.of("parts"));
  }

  private static Subject subject(UsedPart used, String what) {
    return Subject.of("parts").part(used.name().value()).part(what);
  }

  private void askPlace(UsedPart used) {
    Optional<Choice<Screws.Place>> place = used.part().screws().flatMap(Screws::in);
    if (place.isEmpty()) {
      unsaid(places, used, "screws");
    } else {
      Subject subject = subject(used, "place of screws");
      weathering.add(
          new ScrewPlace(
              subject,
              subject,
              used.name().at(),
              Unit.NUMBER,
              used.name().value(),
              place.get().toString(),
              place.get().value() == Screws.Place.PAN));
    }
  }

  private void askWasher(UsedPart used) {
    Optional<Choice<Washer>> washer = used.part().screws().flatMap(Screws::washer);
    if (washer.isEmpty()) {
      unsaid(washers, used, "screws");
    } else {
      Washer value = washer.get().value();
      Subject subject = subject(used, "washers");
      weathering.add(
          new ScrewWasher(
              subject,
              subject,
              used.name().at(),
              Unit.NUMBER,
              used.name().value(),
              value == Washer.NONE ? "nothing" : "a washer of kind " + washer.get(),
              value == Washer.EPDM || value == Washer.NEOPRENE));
    }
  }

  private void askSeal(UsedPart used, RibBracket bracket) {
    Subject subject = subject(used, "seal");
    bracket
        .sealed()
        .ifPresentOrElse(
            flag ->
                weathering.add(
                    new BracketSeal(
                        subject,
                        subject,
                        used.name().at(),
                        Unit.NUMBER,
                        used.name().value(),
                        flag.value())),
            () -> unsaid(seals, used, "sealed"));
  }

  private static void unsaid(Unsaid unsaid, UsedPart used, String key) {
    String name = used.name().value();
    unsaid.add(name, "parts", used.shelf(), name, key);
  }
}
