package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.ElectricalCode;
import clampwise.job.Quantity.Voltage;
import clampwise.job.RapidShutdown;
import clampwise.job.RapidShutdown.Initiator;
import clampwise.job.RapidShutdown.Inside;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.Optional;

/** Asks, under the NEC, how the array is made safe for firefighters. */
record ShutdownQuestions(Wiring wiring, ElectricalCode code, RapidShutdown shutdown) {

  private static final Subject SHUTDOWN = Wiring.ELECTRICAL.part("rapid shutdown");

  static void ask(Wiring wiring) {
    Outcome<ElectricalCode> code = wiring.code();
    Optional<RapidShutdown> shutdown = wiring.electrical().rapidShutdown();
    if (code instanceof NotApplicable<ElectricalCode> unknown) {
      wiring.missing(ShutdownStart.class, SHUTDOWN, unknown.reason());
    } else if (code.result().orElseThrow().isNec()) {
      shutdown.ifPresentOrElse(
          written -> new ShutdownQuestions(wiring, code.result().orElseThrow(), written).ask(),
          () -> wiring.missing(ShutdownStart.class, SHUTDOWN, unsaid(wiring)));
    }
  }

  private static String unsaid(Wiring wiring) {
    return wiring.lacks("how rapid shutdown is done", "rapid-shutdown");
  }

  private void ask() {
    shutdown
        .initiator()
        .ifPresentOrElse(
            start -> wiring.answers().add(start(start)),
            () -> missing(ShutdownStart.class, "what starts rapid shutdown", "initiator"));
    askVoltage();
    askTime();
    shutdown
        .inside()
        .ifPresentOrElse(
            this::askInside,
            () -> missing(ShutdownInside.class, "what holds inside the array boundary", "inside"));
  }

  private static ShutdownStart start(Choice<Initiator> start) {
    return new ShutdownStart(
        SHUTDOWN.part("initiator"), start.at(), Unit.NUMBER, start.value() != Initiator.NONE);
  }

  private void askVoltage() {
    Limit most = limit("outside", Units.VOLT);
    shutdown
        .outsideVoltage()
        .ifPresentOrElse(
            volts ->
                wiring
                    .answers()
                    .add(
                        new ShutdownVoltage(
                            SHUTDOWN.part("outside"),
                            volts.at(),
                            volts.unit(),
                            volts.v(),
                            most.si(),
                            Optional.of(most))),
            () ->
                missing(
                    ShutdownVoltage.class, "the voltage outside the boundary", "outside-voltage"));
  }

  private void askTime() {
    Limit most = limit("time", Units.SECOND);
    shutdown
        .outsideTime()
        .ifPresentOrElse(
            time ->
                wiring
                    .answers()
                    .add(
                        new ShutdownTime(
                            SHUTDOWN.part("time"),
                            time.at(),
                            time.unit(),
                            time.s(),
                            most.si(),
                            Optional.of(most))),
            () -> missing(ShutdownTime.class, "the time rapid shutdown takes", "outside-time"));
  }

  private void askInside(Choice<Inside> inside) {
    String why = why(inside.value());
    wiring
        .answers()
        .add(
            new ShutdownInside(
                SHUTDOWN.part("inside"),
                inside.at(),
                Unit.NUMBER,
                words(inside.value()),
                why.isEmpty(),
                why));
    if (inside.value() == Inside.LOW_VOLTAGE) {
      askInsideVoltage();
    }
  }

  private static String words(Inside inside) {
    return switch (inside) {
      case LISTED_SYSTEM -> "a listed hazard control system";
      case LOW_VOLTAGE -> "a lowered voltage";
      case NO_EXPOSED_METAL -> "an array without exposed metal";
      case NONE -> "nothing";
    };
  }

  /** Why that does not serve; empty if it does. */
  private String why(Inside inside) {
    String edition = Choice.word(code);
    return switch (inside) {
      case LISTED_SYSTEM, LOW_VOLTAGE -> "";
      case NONE -> edition + " asks for a listed system or a lowered voltage there";
      case NO_EXPOSED_METAL ->
          isAllowed()
              ? "frames, clamps and roof are metal within reach of it"
              : edition + " no longer knows it, and frames and roof are metal";
    };
  }

  private boolean isAllowed() {
    return limits().rows().anyMatch(row -> row.word("no-exposed-metal").equals("allowed"));
  }

  private void askInsideVoltage() {
    Limit most = limit("inside", Units.VOLT);
    Optional<Voltage> volts = shutdown.insideVoltage();
    if (volts.isEmpty()) {
      String what = "the voltage inside the boundary";
      missing(ShutdownInsideVoltage.class, what, "inside-voltage");
    } else {
      wiring
          .answers()
          .add(
              new ShutdownInsideVoltage(
                  SHUTDOWN.part("inside"),
                  volts.get().at(),
                  volts.get().unit(),
                  volts.get().v(),
                  most.si(),
                  Optional.of(most)));
    }
  }

  private Limit limit(String column, Unit unit) {
    return limits().find(column, unit).orElseThrow();
  }

  private CodeLimits limits() {
    return new CodeLimits(wiring.tables().get("rapid-shutdown"), code);
  }

  private void missing(Class<? extends Fact> type, String what, String key) {
    wiring.missing(type, SHUTDOWN, wiring.lacks(what, "rapid-shutdown", key));
  }
}
