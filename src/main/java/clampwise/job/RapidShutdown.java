package clampwise.job;

import clampwise.job.Quantity.Duration;
import clampwise.job.Quantity.Voltage;
import java.util.Optional;

/** How the array is made safe for firefighters. */
public record RapidShutdown(
    @Doc("What starts it.") Optional<Choice<RapidShutdown.Initiator>> initiator,
    @Doc("Voltage outside the array boundary after it has started.")
        Optional<Voltage> outsideVoltage,
    @Doc("Time until that voltage is reached.") Optional<Duration> outsideTime,
    @Doc("What holds inside the array boundary.") Optional<Choice<RapidShutdown.Inside>> inside,
    @Doc("Voltage inside the boundary after it has started, where it is lowered.")
        Optional<Voltage> insideVoltage) {

  /** What starts a rapid shutdown. */
  public enum Initiator {
    SERVICE_DISCONNECT,
    PV_DISCONNECT,
    SWITCH,
    NONE
  }

  /** What holds inside the array boundary. */
  public enum Inside {
    LISTED_SYSTEM,
    LOW_VOLTAGE,
    NO_EXPOSED_METAL,
    NONE
  }
}
