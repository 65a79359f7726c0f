package clampwise.job;

import clampwise.job.Quantity.Area;
import clampwise.job.Quantity.Length;
import java.util.List;
import java.util.Optional;

/** What the fire code needs to know of the roof. */
public record Fire(
    @Doc("Fire rule set with its edition.") Optional<Choice<Fire.RuleSet>> rules,
    @Doc("Dwelling for one- and two-family dwellings and townhouses, commercial for the rest.")
        Optional<Choice<Fire.Occupancy>> occupancy,
    @Doc("Why the access rules are not applied, if they are not.")
        Optional<Choice<Fire.Exemption>> exempt,
    @Doc("Whether automatic sprinklers protect the dwelling; no when left out.")
        Optional<Flag> sprinklered,
    @Doc("Planes on the street or driveway side, by name.") List<Text> streetSide,
    @Doc("Planes that meet at a hip, valley or ridge, two by two.") List<Fire.Adjacent> adjacent,
    @Doc("Whether the job draws every plane of the roof.") Optional<Flag> wholeRoof,
    @Doc("Plan area of the whole roof; else the planes drawn or the size of the building.")
        Optional<Area> roofPlanArea,
    @Doc("Escape and rescue openings above a roof plane, by name.")
        Named<Fire.EscapeOpening> escapeOpenings,
    @Doc("How the smoke vents among the obstructions open.")
        Optional<Choice<Fire.VentOperation>> smokeVents,
    @Doc("Venting cutouts along the paths between array sections.") Optional<Fire.Cutouts> cutouts,
    @Doc("Fire class that the roof needs.") Optional<Choice<Fire.RoofClass>> roofClass,
    @Doc("Listing of modules and mount together.") Optional<Fire.Listing> listing) {

  /** A fire code with its edition, or a local variant. */
  public enum RuleSet implements Choice.Edition {
    IFC_2018,
    IFC_2021,
    IFC_2024,
    NFPA_1,
    OREGON,
    NEW_YORK_CITY
  }

  /** Use of a building, as fire codes tell access rules apart. */
  public enum Occupancy {
    DWELLING,
    COMMERCIAL
  }

  /** Why access rules need not be kept. */
  public enum Exemption {
    DETACHED_NON_HABITABLE,
    WAIVED
  }

  /** How smoke vents open: by falling away in heat, or by a mechanism. */
  public enum VentOperation {
    GRAVITY,
    NON_GRAVITY
  }

  /** Fire class of a roof, A the best. */
  public enum RoofClass {
    A,
    B,
    C
  }

  /** Roof slopes a listing holds for. */
  public enum Slopes {
    STEEP,
    LOW,
    ANY
  }

  /** Two planes that share an edge. */
  public record Adjacent(
      @Doc("One plane, by name.") Text plane, @Doc("The other plane, by name.") Text to) {}

  /** A window or door through which people are to escape onto the roof. */
  public record EscapeOpening(
      @Doc("Plane below it, by name.") Text plane,
      @Doc("Left end of its sill on the plane.") Spot at,
      @Doc("Width of its sill.") Length width) {}

  /** Openings that can be cut for smoke. */
  public record Cutouts(
      @Doc("Size of each.") Size size,
      @Doc("Distance from one to the next.") Length every,
      @Doc("Whether they lie on alternating sides of the path.") Optional<Flag> alternating) {}

  /** A fire classification of modules on a mount. */
  public record Listing(
      @Doc("Class it gives.") Choice<RoofClass> listedClass,
      @Doc("Fire types of modules it holds for, such as type 1.") List<Text> moduleTypes,
      @Doc("Roof slopes it holds for: steep is 2:12 and more.") Optional<Choice<Slopes>> slopes,
      @Doc("Clear space under the modules it holds for.") Optional<LengthRange> clearSpace) {}
}
