package clampwise.job;

import clampwise.job.Quantity.Area;
import clampwise.job.Quantity.Duration;
import clampwise.job.Quantity.Factor;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Mass;
import java.util.Optional;

/** What a take-off needs beside the drawing, and what the parts list and the quotation state. */
public record Takeoff(
    @Doc("Spares that the take-off adds, as a share such as 3 %.") Optional<Factor> spares,
    @Doc("Modules on a pallet, as the supplier packs them.") Optional<Count> modulesPerPallet,
    @Doc("Length of the grounding conductor from the lugs to where it ends.")
        Optional<Length> groundingConductor,
    @Doc("Length of cable from the strings to the inverters, both conductors.")
        Optional<Length> homeRuns,
    @Doc("Parts and modules on the list of the order, by name, spares included.")
        Named<Count> partsList,
    @Doc("Time of the crew on the roof, as the quotation states it.")
        Optional<Takeoff.CrewTime> crewTime,
    @Doc("Freight, as the quotation states it.") Optional<Takeoff.Freight> freight,
    @Doc("How the pallets stand on the roof until they are empty.")
        Optional<Takeoff.Staging> staging) {

  /** Time of a crew, in all or by phase. */
  public record CrewTime(
      @Doc("All phases together.") Optional<Duration> total,
      @Doc("Set-up, fall protection and lifting.") Optional<Duration> setUp,
      @Doc("Setting out and fixing the attachments.") Optional<Duration> attachments,
      @Doc("Laying the modules in place.") Optional<Duration> placement,
      @Doc("Setting mid and end clamps with a torque tool.") Optional<Duration> clamps,
      @Doc("Jumpers, lugs and grounding conductor.") Optional<Duration> bonding,
      @Doc("Cables, connectors and clips.") Optional<Duration> wiring) {}

  /** Freight as ordered. */
  public record Freight(
      @Doc("Pallets of modules.") Optional<Count> pallets,
      @Doc("Mass of modules and hardware, without the pallets.") Optional<Mass> mass) {}

  /** How pallets stand on the roof. */
  public record Staging(
      @Doc("Where they stand: on the ground, on the panels, or spread over the frames.")
          Choice<Takeoff.StandOn> on,
      @Doc("Modules on the fullest pallet that is lifted up; a full pallet when left out.")
          Optional<Count> modules,
      @Doc("Area of roof over which it is spread; that of the pallet when left out.")
          Optional<Area> spreadOver) {}

  /** Where a pallet stands. */
  public enum StandOn {
    GROUND,
    PANELS,
    FRAMES
  }
}
