package clampwise.facts.durability;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.weight.ClearSpace;
import clampwise.finding.Subject;
import clampwise.job.Documents;
import clampwise.job.Flag;
import clampwise.job.Named;
import clampwise.job.RibBracket;
import clampwise.job.Roof;
import clampwise.job.Text;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/** Asks of the warranty, of swarf and of what gathers under the array. */
record RoofState(Weathering weathering, Roof roof) {

  void ask() {
    askWarranty();
    UsedPart.all(weathering).stream()
        .filter(used -> used.part() instanceof RibBracket)
        .findFirst()
        .ifPresent(this::askSwarf);
    askDebris();
  }

  /** A letter that the package of documents wants and lacks is found there. */
  private void askWarranty() {
    Optional<Text> listed = listedLetter();
    if (listed.isPresent()) {
      addWarranty(listed.get().at(), true, true);
    } else if (!isAskedOfDocuments()) {
      askStatedWarranty();
    }
  }

  private Optional<Text> listedLetter() {
    Optional<Documents> documents = weathering.job().documents();
    for (Named.Item<Documents.Sheet> sheet :
        documents.map(Documents::sheets).orElse(Named.none()).all()) {
      if (sheet.value().kind().value() == Documents.SheetKind.ROOF_WARRANTY_LETTER) {
        return Optional.of(sheet.name());
      }
    }
    return Optional.empty();
  }

  private boolean isAskedOfDocuments() {
    return weathering
        .job()
        .documents()
        .flatMap(Documents::project)
        .filter(project -> project.value() != Documents.Project.EXPEDITED)
        .isPresent();
  }

  private void askStatedWarranty() {
    Optional<Flag> force = roof.underWarranty();
    Optional<Flag> letter = roof.warrantyLetter();
    boolean none = force.filter(flag -> !flag.value()).isPresent();
    if (letter.isEmpty() && !none) {
      String what = "whether the giver of the warranty agreed";
      missing(
          WarrantyLetter.class,
          Weathering.ROOF.part("warranty"),
          weathering.lacks(what, "roof", "warranty-letter"));
    } else {
      Flag at = letter.or(() -> force).orElseThrow();
      addWarranty(at.at(), !none, letter.filter(Flag::value).isPresent());
    }
  }

  private void addWarranty(Span at, boolean inForce, boolean agreed) {
    Subject subject = Weathering.ROOF.part("warranty");
    weathering.add(new WarrantyLetter(subject, at, Unit.NUMBER, inForce, agreed));
  }

  private void askSwarf(UsedPart used) {
    Subject subject = Weathering.ROOF.part("swarf");
    roof.swarfRemoved()
        .ifPresentOrElse(
            flag ->
                weathering.add(
                    new SwarfLeft(
                        subject, flag.at(), Unit.NUMBER, used.name().value(), flag.value())),
            () ->
                missing(
                    SwarfLeft.class,
                    subject,
                    weathering.lacks("whether swarf is taken off", "roof", "swarf-removed")));
  }

  private void askDebris() {
    for (FieldLayout field : weathering.layout().fields()) {
      Subject subject = Subjects.field(field.name()).part("gap below");
      Optional<ClearSpace> space = ClearSpace.of(field);
      if (roof.treesNear().isEmpty()) {
        String what = "whether trees stand near";
        missing(DebrisTrap.class, subject, weathering.lacks(what, "roof", "trees-near"));
      } else if (space.isEmpty()) {
        missing(DebrisTrap.class, subject, ClearSpace.unknown(field, weathering.unreadable()));
      } else {
        weathering.add(debris(subject, field, space.get()));
      }
    }
  }

  private DebrisTrap debris(Subject subject, FieldLayout field, ClearSpace space) {
    Limit least = weathering.limit("debris-gap-least");
    Flag trees = roof.treesNear().orElseThrow();
    return new DebrisTrap(
        subject,
        AirGaps.at(field),
        space.unit(),
        field.name(),
        trees.value(),
        isYes(roof.debrisScreen()) && isYes(roof.yearlyCleaning()),
        space.m(),
        Snap.m(least.si()),
        Optional.of(least));
  }

  private static boolean isYes(Optional<Flag> flag) {
    return flag.filter(Flag::value).isPresent();
  }

  private void missing(Class<? extends Fact> type, Subject subject, String reason) {
    weathering.missing(type, subject, reason);
  }
}
