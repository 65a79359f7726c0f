package clampwise.takeoff;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.Snap;
import clampwise.calc.electrical.CableClips;
import clampwise.facts.bonding.BondCounts;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Bonding;
import clampwise.job.Cables;
import clampwise.job.Electrical;
import clampwise.job.Quantity.Length;
import clampwise.job.Text;
import clampwise.job.Unreadable;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Counts the parts of a layout. */
final class PartCounter {

  private static final Set<PartKind> HOLDING =
      EnumSet.range(PartKind.SEAM_CLAMP, PartKind.END_CLAMP);
  private static final Set<PartKind> ALL_OF_FIELDS =
      EnumSet.range(PartKind.MODULE, PartKind.END_CLAMP);
  private static final Set<PartKind> BONDS = EnumSet.of(PartKind.JUMPER, PartKind.LUG);
  private static final Set<PartKind> CLIPS = EnumSet.of(PartKind.WIRE_CLIP);

  private static final String NOT_LAID_OUT = "it could not be read or laid out as written";

  private final Layout layout;
  private final PartKinds kinds;
  private final SortedMap<Part, Integer> counts = new TreeMap<>();
  private final List<NotCounted> notCounted = new ArrayList<>();

  PartCounter(Layout layout) {
    this.layout = layout;
    this.kinds = PartKinds.of(layout);
  }

  Counts counts() {
    return new Counts(counts, List.copyOf(notCounted));
  }

  void count() {
    if (layout.job().unreadable().holds("fields")) {
      miss("modules and what holds them", "the fields could not be read", ALL_OF_FIELDS);
    }
    layout.incomplete().forEach(field -> miss("field " + field, NOT_LAID_OUT, ALL_OF_FIELDS));
    for (FieldLayout field : layout.fields()) {
      if (!layout.incomplete().contains(field.name())) {
        countField(field);
      }
    }
    layout.job().bonding().ifPresentOrElse(this::countBonds, this::missBonds);
    countClips();
  }

  private void countField(FieldLayout field) {
    for (PlacedModule module : field.modules()) {
      add(PartKind.MODULE, module.typeName(), 1);
    }
    Optional<String> unknown =
        field.attachments().isEmpty()
            ? Optional.of("field " + field.name() + " has no attachments drawn")
            : Optional.empty();
    field
        .attachmentsUnknown()
        .or(() -> unknown)
        .ifPresentOrElse(
            reason -> miss("attachments and clamps of field " + field.name(), reason, HOLDING),
            () -> field.attachments().forEach(this::countAttachment));
  }

  private void countAttachment(Attachment drawn) {
    String part = name(drawn.part());
    add(kinds.attachment(part), part, 1);
    if (drawn.kind() != Kind.NONE) {
      PartKind clamp = drawn.kind() == Kind.MID ? PartKind.MID_CLAMP : PartKind.END_CLAMP;
      add(clamp, name(drawn.clamp()), 1);
    }
  }

  private void countBonds(Bonding bonding) {
    BondCounts bonds = BondCounts.of(layout, bonding);
    Optional<String> incomplete =
        layout.incomplete().isEmpty()
            ? Optional.empty()
            : Optional.of("not all fields could be laid out as written");
    bonds
        .unknown()
        .or(() -> incomplete)
        .ifPresentOrElse(
            reason -> miss("jumpers and lugs", reason, BONDS),
            () -> {
              addAll(PartKind.JUMPER, bonds.jumpers());
              addAll(PartKind.LUG, bonds.lugs());
            });
  }

  private void missBonds() {
    Unreadable unreadable = layout.job().unreadable();
    String unwritten = "the job says nothing about bonding";
    miss("jumpers and lugs", unreadable.unwritten(unwritten, "the bonding", "bonding"), BONDS);
  }

  private void countClips() {
    Optional<Cables> cables = layout.job().electrical().flatMap(Electrical::cables);
    Optional<Length> spacing = cables.flatMap(Cables::supportSpacing);
    if (spacing.isEmpty()) {
      miss("wire clips", "the spacing is not given (electrical: cables: support-spacing)", CLIPS);
    } else {
      countClips(cables.get(), spacing.get());
    }
  }

  private void countClips(Cables cables, Length spacing) {
    Outcome<CableRuns> runs = CableRuns.of(layout, cables);
    if (runs instanceof Result<CableRuns> known) {
      int clips = CableClips.least(Snap.m(known.value().lengthM()), spacing.m());
      add(PartKind.WIRE_CLIP, name(cables.clip()), clips);
    } else if (runs instanceof NotApplicable<CableRuns> unknown) {
      miss("wire clips", unknown.reason(), CLIPS);
    }
  }

  private void addAll(PartKind kind, Map<String, Integer> parts) {
    parts.forEach((name, count) -> add(kind, name, count));
  }

  private void add(PartKind kind, String name, int count) {
    if (count > 0) {
      counts.merge(new Part(kind, name), count, Integer::sum);
    }
  }

  private void miss(String what, String reason, Set<PartKind> kinds) {
    notCounted.add(new NotCounted(what, reason, kinds));
  }

  private static String name(Optional<Text> written) {
    return written.map(Text::value).orElse("");
  }
}
