package clampwise.facts.clamps;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.Subjects;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.Named;
import clampwise.job.Quantity.Length;
import clampwise.job.Text;
import clampwise.source.Span;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Asks where frames of different module types share a mid clamp. */
final class SharedMidClamps {

  private static final String LIMIT = "frame-height-difference-most";

  private final FieldCase asked;
  private final ClampParts parts;
  private final Set<String> told = new HashSet<>();

  private SharedMidClamps(FieldCase asked) {
    this.asked = asked;
    this.parts = ClampParts.of(asked.layout());
  }

  /** Two modules of different types, the lower first, under one clamp. */
  private record Pair(PlacedModule lower, PlacedModule upper, ClampUse use) {}

  static void ask(FieldCase asked) {
    SharedMidClamps shared = new SharedMidClamps(asked);
    asked.field().attachments().stream()
        .filter(attachment -> attachment.grips().size() == 2)
        .forEach(shared::look);
  }

  private void look(Attachment attachment) {
    PlacedModule lower = attachment.grips().get(0).module();
    PlacedModule upper = attachment.grips().get(1).module();
    if (!lower.typeName().equals(upper.typeName())) {
      parts.on(attachment).ifPresent(use -> judge(new Pair(lower, upper, use)));
    }
  }

  private void judge(Pair pair) {
    Optional<Length> lower = pair.lower.type().frameHeight();
    Optional<Length> upper = pair.upper.type().frameHeight();
    if (!told.add(pair.lower.name() + pair.upper.name() + pair.use.word())) {
      return;
    }
    if (lower.isEmpty() || upper.isEmpty()) {
      String reason = FrameFits.noHeight(asked, lower.isEmpty() ? pair.lower : pair.upper);
      asked.missing(SharedMidClamp.class, cause(pair), reason, at(pair));
    } else {
      asked.add(fact(pair, lower.get(), upper.get()));
    }
  }

  private SharedMidClamp fact(Pair pair, Length lower, Length upper) {
    Limit practice = asked.limits().get(LIMIT);
    Optional<Length> stated = pair.use.clamp().heightDifferenceAtMost();
    return new SharedMidClamp(
        Subjects.module(pair.upper),
        cause(pair),
        at(pair),
        lower.unit(),
        Map.of("lowerHeightM", lower.unit(), "upperHeightM", upper.unit()),
        pair.use.name().value(),
        pair.lower.name(),
        pair.upper.name(),
        lower.m(),
        upper.m(),
        Snap.m(Math.abs(upper.m() - lower.m())),
        Snap.m(stated.map(Length::m).orElse(practice.si())),
        stated.isPresent() ? Optional.empty() : Optional.of(practice));
  }

  private Subject cause(Pair pair) {
    String types =
        Stream.of(pair.upper.typeName(), pair.lower.typeName())
            .sorted()
            .collect(Collectors.joining(" and "));
    return asked.subject().part(types).part(pair.use.word());
  }

  private Span at(Pair pair) {
    return other(pair.upper)
        .or(() -> other(pair.lower))
        .map(Text::at)
        .orElse(asked.field().field().module().at());
  }

  private Optional<Text> other(PlacedModule module) {
    Named<Text> others = asked.field().field().otherModules();
    String place = module.name().substring(module.field().length() + 1);
    return others.find(place).or(() -> others.find(module.name()));
  }
}
