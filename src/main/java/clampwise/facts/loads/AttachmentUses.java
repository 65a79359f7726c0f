package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.combination.Method;
import clampwise.calc.statics.LimitState;
import clampwise.calc.statics.Strength;
import clampwise.calc.statics.TestedLoad;
import clampwise.calc.trail.Work;
import clampwise.catalogue.Limit;
import clampwise.facts.Answers;
import clampwise.facts.layout.Attachment;
import clampwise.facts.loads.Demands.Used;
import clampwise.finding.Subject;
import clampwise.job.Tested;
import clampwise.job.Text;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Holds the forces of each attachment of a field against what it may take there.
 *
 * @param <S> the limit state of loads and strengths
 */
final class AttachmentUses<S extends LimitState> {

  private static final Comparator<Used> BY_SHARE =
      Comparator.comparingDouble(used -> used.utilisation().together());

  private final LoadedField field;
  private final FieldLoads loads;
  private final FieldSite site;
  private final Shares shares;
  private final Demands demands;
  private final FieldParts parts;
  private final Strengths.Conversion<S> conversion;
  private final Answers answers;
  private final Map<String, Outcome<Strengths<S>>> strengths = new HashMap<>();
  private final Map<String, Optional<String>> patterns = new HashMap<>();

  private AttachmentUses(LoadedField field, Strengths.Conversion<S> conversion, Answers answers) {
    this.field = field;
    this.loads = field.loads();
    this.site = loads.site();
    this.shares = field.shares();
    this.demands = new Demands(loads, shares);
    this.parts = new FieldParts(site);
    this.conversion = conversion;
    this.answers = answers;
  }

  static void ask(LoadedField field, Answers answers) {
    Standard standard = field.loads().standard();
    if (standard.method() == Method.ASD) {
      new AttachmentUses<LimitState.Asd>(field, TestedLoad::allowable, answers).ask();
    } else {
      new AttachmentUses<LimitState.Lrfd>(field, standard.design(), answers).ask();
    }
  }

  private void ask() {
    loads.windUnknown().ifPresent(reason -> missing(site.subject().part("uplift"), reason));
    loads
        .windUnknown()
        .or(loads::snowUnknown)
        .ifPresent(reason -> missing(site.subject().part("pressure"), reason));
    site.field().attachments().forEach(this::ask);
  }

  private void ask(Attachment attachment) {
    Subject subject = subject(attachment);
    if (shares.isAlone(attachment)) {
      missing(subject, attachment.name() + " is the only clamp on a module edge, which tips");
    } else if (attachment.part().isEmpty()) {
      missing(subject, parts.unnamed());
    } else if (!shares.of(attachment).isEmpty()) {
      Outcome<Strengths<S>> known = strengths(attachment.part().get());
      if (known instanceof Result<Strengths<S>> strong) {
        answer(attachment, strong.value());
      }
    }
  }

  /** Says what is missing once for each part. */
  private Outcome<Strengths<S>> strengths(Text part) {
    Outcome<Strengths<S>> known = strengths.get(part.value());
    if (known == null) {
      known =
          parts.row(part).then(row -> Strengths.of(part, row, method(), conversion, Work.unread()));
      strengths.put(part.value(), known);
      Subject subject = site.subject().part("attachment " + part);
      if (known instanceof NotApplicable<Strengths<S>> none) {
        answers.missing(AttachmentUse.class, subject, none.reason(), part.at());
      } else if (known instanceof Result<Strengths<S>> strong) {
        strong
            .value()
            .unstated(part)
            .forEach(
                (way, reason) ->
                    answers.missing(AttachmentUse.class, subject.part(way), reason, part.at()));
      }
    }
    return known;
  }

  private void answer(Attachment attachment, Strengths<S> strong) {
    Stream.of(true, false)
        .flatMap(up -> demands.worst(attachment, strong, up).stream())
        .max(BY_SHARE)
        .ifPresent(used -> answers.add(fact(attachment, strong, used)));
  }

  private AttachmentUse fact(Attachment attachment, Strengths<S> strong, Used used) {
    boolean up = used.force().normalN() > 0;
    double noteAbove = site.limits().get("utilisation-note").si();
    Limit most = site.limits().get("utilisation-most");
    String zone = attachment.zone().map(area -> area.name()).orElse(FieldLoads.NO_ZONE);
    Subject cause = site.subject().part("attach").part("zone " + zone);
    Unit unit = unit(strong.row());
    var resistance = strong.resistance();
    return new AttachmentUse(
        subject(attachment),
        cause,
        attachment.at(),
        Unit.NUMBER,
        Map.of("normalN", unit, "alongN", unit, "normalStrengthN", unit, "alongStrengthN", unit),
        site.field().name(),
        attachment.name(),
        attachment.part().orElseThrow().value(),
        zone,
        up ? "uplift" : "pressure",
        loads.standard().combinations().get(used.force().combination()).name(),
        Math.abs(used.force().normalN()),
        tributary(attachment, used, unit),
        used.force().alongN(),
        strength(up ? resistance.up() : resistance.down()),
        strength(resistance.slope()),
        rounded(used.utilisation().together()),
        most.si(),
        noteAbove,
        used.utilisation().together() > noteAbove
            ? pattern(zone, attachment, strong)
            : Optional.empty(),
        Optional.of(
            AttachmentChain.of(
                new AttachmentChain.Subject(loads, shares, attachment, used), strong, conversion)),
        Optional.of(most));
  }

  /** The force by tributary width, where that would tell a different story. */
  private Optional<String> tributary(Attachment attachment, Used used, Unit unit) {
    double normalN = used.force().normalN();
    double byWidthN = demands.byWidthN(attachment, used.force().combination(), normalN > 0);
    return Math.abs(byWidthN - normalN)
            <= site.limits().get("tributary-share-apart").si() * Math.abs(normalN)
        ? Optional.empty()
        : Optional.of(" (by tributary width " + QuantityPrint.text(Math.abs(byWidthN), unit) + ")");
  }

  private Optional<String> pattern(String zone, Attachment attachment, Strengths<S> strong) {
    Text part = attachment.part().orElseThrow();
    return patterns.computeIfAbsent(
        zone + "\n" + part,
        key ->
            SeamPatterns.of(
                field,
                site.field().attachments().stream().filter(a -> isLike(a, attachment)).toList(),
                strong));
  }

  /** The same part in the same zone. */
  private static boolean isLike(Attachment one, Attachment other) {
    return one.part().map(Text::value).equals(other.part().map(Text::value))
        && one.zone().equals(other.zone());
  }

  private Method method() {
    return loads.standard().method();
  }

  private static <T extends LimitState> double strength(Optional<Strength<T>> strength) {
    return strength.map(Strength::forceN).orElse(Double.NaN);
  }

  /** So that a share of exactly one is at its limit. */
  private static double rounded(double share) {
    return Math.rint(share * 1e9) / 1e9;
  }

  private static Unit unit(Tested row) {
    return row.up().or(row::down).map(force -> force.unit()).orElse(Units.NEWTON);
  }

  private Subject subject(Attachment attachment) {
    String before = site.field().name() + ".";
    String name = attachment.name();
    return site.subject()
        .part("attachment " + (name.startsWith(before) ? name.substring(before.length()) : name));
  }

  private void missing(Subject subject, String reason) {
    answers.missing(AttachmentUse.class, subject, reason, site.field().at());
  }
}
