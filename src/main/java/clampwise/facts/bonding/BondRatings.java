package clampwise.facts.bonding;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.ClampFits;
import clampwise.catalogue.Fits;
import clampwise.catalogue.Fits.Need;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Bonding;
import clampwise.job.BondingPart;
import clampwise.job.Flag;
import clampwise.job.Named;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Asks of each part that ties frames together or to ground whether it is rated for bonding. */
final class BondRatings {

  private final BondParts parts;
  private final Catalogue catalogue;
  private final Answers answers;

  private BondRatings(Layout layout, Bonding bonding, Answers answers) {
    this.parts = BondParts.of(layout, bonding);
    this.catalogue = layout.catalogue().with(layout.job());
    this.answers = answers;
  }

  static void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Bonding> bonding = layout.job().bonding();
    if (bonding.isEmpty()) {
      Unsaid.tell(BondRating.class, layout, answers);
      return;
    }
    BondRatings ratings = new BondRatings(layout, bonding.get(), answers);
    layout.fields().forEach(ratings::judgeClamps);
    bonding.get().jumpers().stream()
        .map(ratings.parts::jumper)
        .distinct()
        .forEach(
            part ->
                ratings.judge(part, () -> ratings.rated(ratings.parts.parts().jumpers(), part)));
    bonding.get().lugs().stream()
        .map(ratings.parts::lug)
        .distinct()
        .forEach(
            part -> ratings.judge(part, () -> ratings.rated(ratings.parts.parts().lugs(), part)));
  }

  private void judgeClamps(FieldLayout field) {
    used(field)
        .distinct()
        .map(name -> parts.midClamp(field, name))
        .forEach(part -> judge(part, () -> fitting(field, part)));
  }

  private static Stream<Optional<Text>> used(FieldLayout field) {
    if (field.attachmentsUnknown().isEmpty()) {
      return field.attachments().stream()
          .filter(drawn -> drawn.kind() == Kind.MID)
          .map(Attachment::clamp);
    }
    boolean stacked = field.modules().stream().anyMatch(module -> module.row() > 1);
    return stacked ? Stream.of(field.field().midClamp()) : Stream.empty();
  }

  private void judge(BondPart part, Supplier<String> fitting) {
    Subject subject = part.user().part(part.kind() + part.name().map(n -> " " + n).orElse(""));
    if (part.doubt().isPresent()) {
      answers.missing(BondRating.class, subject, part.doubt().get(), part.at());
    } else {
      answers.add(rating(part, subject, fitting));
    }
  }

  private static BondRating rating(BondPart part, Subject subject, Supplier<String> fitting) {
    boolean rated = part.rated().filter(Flag::value).isPresent();
    String name = part.name().map(Text::value).orElse("");
    return new BondRating(
        subject,
        Subject.of(part.kind() + " " + name),
        part.at(),
        Unit.NUMBER,
        part.kind(),
        name,
        rated,
        rated ? Optional.empty() : Optional.of(fitting.get()));
  }

  /** Mid clamps that bond, grip the frames of a field and suit the gap between its rows. */
  private String fitting(FieldLayout field, BondPart part) {
    ClampFits clamps = ClampFits.in(catalogue);
    field.type().frameHeight().ifPresent(h -> clamps.gripping(h.m(), h.unit()));
    return told(clamps.bonding(true).mid(), part);
  }

  private String rated(Named<BondingPart> shelf, BondPart part) {
    List<Need<BondingPart>> needs =
        List.of(new Need<>("bonding", other -> other.bonding().filter(Flag::value).isPresent()));
    return told(Fits.of(shelf, needs, other -> 0), part);
  }

  private static String told(Fits fits, BondPart part) {
    return fits.told("another " + part.kind());
  }
}
