package clampwise.facts.bonding;

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
import clampwise.job.ModuleClamp;
import clampwise.job.Named;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Asks of each part that ties frames together or to ground whether it is rated for bonding. */
final class BondRatings {

  private final BondParts parts;
  private final Answers answers;

  private BondRatings(BondParts parts, Answers answers) {
    this.parts = parts;
    this.answers = answers;
  }

  static void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Bonding> bonding = layout.job().bonding();
    if (bonding.isEmpty()) {
      Unsaid.tell(BondRating.class, layout, answers);
      return;
    }
    BondRatings ratings = new BondRatings(BondParts.of(layout, bonding.get()), answers);
    layout.fields().forEach(ratings::judgeClamps);
    bonding.get().jumpers().stream()
        .map(ratings.parts::jumper)
        .distinct()
        .forEach(part -> ratings.judge(part, ratings.rated(ratings.parts.parts().jumpers())));
    bonding.get().lugs().stream()
        .map(ratings.parts::lug)
        .distinct()
        .forEach(part -> ratings.judge(part, ratings.rated(ratings.parts.parts().lugs())));
  }

  private void judgeClamps(FieldLayout field) {
    Optional<String> fitting = fitting(field);
    used(field)
        .distinct()
        .map(name -> parts.midClamp(field, name))
        .forEach(part -> judge(part, fitting));
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

  private void judge(BondPart part, Optional<String> fitting) {
    Subject subject = part.user().part(part.kind() + part.name().map(n -> " " + n).orElse(""));
    if (part.doubt().isPresent()) {
      answers.missing(BondRating.class, subject, part.doubt().get(), part.at());
    } else {
      answers.add(rating(part, subject, fitting));
    }
  }

  private static BondRating rating(BondPart part, Subject subject, Optional<String> fitting) {
    String name = part.name().map(Text::value).orElse("");
    return new BondRating(
        subject,
        Subject.of(part.kind() + " " + name),
        part.at(),
        Unit.NUMBER,
        part.kind(),
        name,
        part.rated().filter(Flag::value).isPresent(),
        fitting);
  }

  /** Mid clamps that bond and grip the frames of a field. */
  private Optional<String> fitting(FieldLayout field) {
    Optional<Double> heightM = field.type().frameHeight().map(height -> height.m());
    return names(
        parts.parts().midClamps(), clamp -> bonds(clamp.bonding()) && grips(clamp, heightM));
  }

  private static boolean grips(ModuleClamp clamp, Optional<Double> heightM) {
    return heightM
        .flatMap(height -> clamp.frameHeight().map(range -> range.contains(height)))
        .orElse(true);
  }

  private Optional<String> rated(Named<BondingPart> shelf) {
    return names(shelf, part -> bonds(part.bonding()));
  }

  private static boolean bonds(Optional<Flag> flag) {
    return flag.filter(Flag::value).isPresent();
  }

  private static <T> Optional<String> names(Named<T> shelf, Function<T, Boolean> wanted) {
    String names =
        shelf.all().stream()
            .filter(item -> wanted.apply(item.value()))
            .map(item -> item.name().value())
            .collect(Collectors.joining(" or "));
    return Optional.of(names).filter(text -> !text.isEmpty());
  }
}
