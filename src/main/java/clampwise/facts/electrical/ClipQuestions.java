package clampwise.facts.electrical;

import clampwise.calc.Snap;
import clampwise.calc.electrical.CableClips;
import clampwise.catalogue.Fits;
import clampwise.catalogue.Fits.Need;
import clampwise.facts.Fact;
import clampwise.job.Cables;
import clampwise.job.Count;
import clampwise.job.LengthRange;
import clampwise.job.Quantity.Length;
import clampwise.job.Text;
import clampwise.job.WireClip;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/** Asks whether the clips hold the cables, and whether there are enough of them. */
record ClipQuestions(Wiring wiring, Cables cables) {

  void ask() {
    askCount();
    if (cables.clip().isEmpty()) {
      missing(ClipRange.class, wiring.lacks("the clip that holds the cables", "cables", "clip"));
    } else {
      Text clip = cables.clip().get();
      Optional<WireClip> part = wiring.catalogue().parts().wireClips().find(clip.value());
      askRange(clip, part);
      askLoad(clip, part);
    }
  }

  private void askRange(Text clip, Optional<WireClip> part) {
    Optional<LengthRange> range = part.flatMap(WireClip::cable);
    if (range.isEmpty()) {
      missing(ClipRange.class, ofClip("the cables that clip " + clip + " holds", clip, "cable"));
    } else if (cables.outerDiameter().isEmpty()) {
      String what = "the outer diameter of cables";
      missing(ClipRange.class, wiring.lacks(what, "cables", "outer-diameter"));
    } else {
      wiring.answers().add(range(clip, range.get(), cables.outerDiameter().get()));
    }
  }

  private ClipRange range(Text clip, LengthRange range, Length diameter) {
    double cableM = Snap.m(diameter.m());
    double minM = Snap.m(range.min().m());
    double maxM = Snap.m(range.max().m());
    return new ClipRange(
        CableQuestions.CABLES,
        clip.at(),
        range.min().unit(),
        clip.value(),
        cableM,
        minM,
        maxM,
        cableM < minM ? minM : maxM,
        cableM < minM || cableM > maxM ? fitting(clip) : Optional.empty());
  }

  /** Clips that hold the cables as they lie. */
  private Optional<String> fitting(Text clip) {
    int together = cables.together().map(Count::value).orElse(1);
    List<Need<WireClip>> needs =
        List.of(
            new Need<>("the diameter of the cables", this::holds),
            new Need<>(
                "the number of cables together",
                part -> part.cables().map(most -> most.value() >= together).orElse(true)));
    Fits fits = Fits.of(wiring.catalogue().parts().wireClips(), needs, part -> 0);
    return Optional.of(fits.without(clip.value()).told("another clip"));
  }

  private boolean holds(WireClip part) {
    return cables.outerDiameter().isEmpty()
        || part.cable()
            .filter(range -> range.contains(cables.outerDiameter().get().m()))
            .isPresent();
  }

  private void askLoad(Text clip, Optional<WireClip> part) {
    Optional<Count> most = part.flatMap(WireClip::cables);
    if (most.isEmpty()) {
      String what = "how many cables clip " + clip + " holds";
      missing(ClipLoad.class, ofClip(what, clip, "cables"));
    } else if (wiring.isLost("cables", "together")) {
      missing(ClipLoad.class, "how many cables lie in one clip could not be read");
    } else {
      wiring
          .answers()
          .add(
              new ClipLoad(
                  CableQuestions.CABLES,
                  cables.together().map(Count::at).orElse(clip.at()),
                  Unit.NUMBER,
                  clip.value(),
                  cables.together().map(Count::value).orElse(1),
                  most.get().value(),
                  isOver(most.get()) ? fitting(clip) : Optional.empty()));
    }
  }

  private boolean isOver(Count most) {
    return cables.together().filter(count -> count.value() > most.value()).isPresent();
  }

  private String ofClip(String what, Text clip, String key) {
    return wiring.unreadable().missing(what, "parts", "wire-clips", clip.value(), key);
  }

  private void askCount() {
    Optional<Length> spacing = cables.supportSpacing();
    Optional<Count> clips = cables.clips();
    if (clips.isEmpty()) {
      missing(ClipCount.class, wiring.lacks("the number of clips", "cables", "clips"));
    } else if (spacing.isEmpty()) {
      String what = "the spacing of the supports of cables";
      missing(ClipCount.class, wiring.lacks(what, "cables", "support-spacing"));
    } else if (cables.runs().isEmpty() && isLayoutUnknown()) {
      missing(ClipCount.class, "the length of the rows could not be read or laid out");
    } else {
      wiring.answers().add(count(clips.get(), spacing.get()));
    }
  }

  private boolean isLayoutUnknown() {
    return wiring.isLost("cables", "runs") || !wiring.layout().incomplete().isEmpty();
  }

  private ClipCount count(Count clips, Length spacing) {
    Unit unit = spacing.unit();
    double runsM = cables.runs().map(Length::m).orElseGet(this::rowsM);
    String from = cables.runs().isPresent() ? "" : " along all rows";
    boolean imperial = unit.equals(Unit.INCH) || unit.equals(Unit.FOOT);
    String runs = QuantityPrint.text(runsM, imperial ? Unit.FOOT : Unit.METRE) + from;
    return new ClipCount(
        CableQuestions.CABLES,
        clips.at(),
        Unit.NUMBER,
        runs,
        QuantityPrint.text(spacing.m(), unit),
        clips.value(),
        CableClips.least(Snap.m(runsM), spacing.m()));
  }

  /** The leads of the modules of a row run along it. */
  private double rowsM() {
    return wiring.layout().fields().stream()
        .flatMap(field -> field.modules().stream())
        .mapToDouble(module -> module.alongM())
        .sum();
  }

  private void missing(Class<? extends Fact> type, String reason) {
    wiring.missing(type, CableQuestions.CABLES, reason);
  }
}
