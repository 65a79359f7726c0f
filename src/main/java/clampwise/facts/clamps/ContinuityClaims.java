package clampwise.facts.clamps;

import clampwise.calc.statics.Beam;
import clampwise.calc.statics.BeamForces;
import clampwise.calc.statics.Tributary;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.ModuleEdge;
import clampwise.finding.Subject;
import clampwise.job.Claims;
import clampwise.job.Quantity.Factor;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/** Holds the factor for continuity that the drawings claim against the edges on their clamps. */
final class ContinuityClaims {

  /** An edge on two clamps is cut nowhere and continues nowhere: each clamp has its own half. */
  private static final double SIMPLE = 1;

  /** Factors are stated to two decimals. */
  private static final double DECIMALS = 100;

  private ContinuityClaims() {}

  private record Governing(ModuleEdge edge, double factor) {}

  static void ask(FieldCase asked) {
    asked.layout().job().claims().flatMap(Claims::continuityFactor).ifPresent(f -> ask(asked, f));
  }

  private static void ask(FieldCase asked, Factor claimed) {
    Optional<String> unknown = asked.field().attachmentsUnknown();
    Optional<Governing> governing = governing(asked.field().edges());
    if (unknown.isPresent()) {
      asked.missing(ContinuityClaim.class, asked.subject(), unknown.get(), asked.at());
    } else if (governing.isEmpty()) {
      String reason = "no module edge of field " + asked.field().name() + " is on two clamps";
      asked.missing(ContinuityClaim.class, asked.subject(), reason, asked.scheduleAt());
    } else {
      asked.add(fact(asked, claimed, governing.get()));
    }
  }

  private static Optional<Governing> governing(List<ModuleEdge> edges) {
    Optional<Governing> governing = Optional.empty();
    for (ModuleEdge edge : edges) {
      Optional<Double> factor = factor(edge);
      if (factor.isPresent() && (governing.isEmpty() || factor.get() > governing.get().factor())) {
        governing = Optional.of(new Governing(edge, factor.get()));
      }
    }
    return governing;
  }

  private static Optional<Double> factor(ModuleEdge edge) {
    double[] clampsM = edge.attachments().stream().mapToDouble(Attachment::alongM).toArray();
    if (clampsM.length < 2) {
      return Optional.empty();
    }
    double fromM = edge.module().leftM();
    double toM = edge.module().rightM();
    return clampsM.length == 2
        ? Optional.of(SIMPLE)
        : new Beam(fromM, toM, clampsM)
            .under(1)
            .result()
            .map(forces -> most(forces, Tributary.widthsM(fromM, toM, clampsM)));
  }

  private static double most(BeamForces forces, double[] widthsM) {
    double most = SIMPLE;
    for (int i = 0; i < widthsM.length; i++) {
      most = Math.max(most, forces.reactionsN()[i] / widthsM[i]);
    }
    return Math.rint(most * DECIMALS) / DECIMALS;
  }

  private static ContinuityClaim fact(FieldCase asked, Factor claimed, Governing governing) {
    int clamps = governing.edge().attachments().size();
    return new ContinuityClaim(
        asked.subject().part("continuity"),
        Subject.of("claims", "continuity factor"),
        claimed.at(),
        Unit.NUMBER,
        asked.field().name(),
        clamps == 2 ? "each edge stands on two clamps" : "edges run over " + clamps + " clamps",
        governing.edge().module().name(),
        claimed.value(),
        governing.factor());
  }
}
