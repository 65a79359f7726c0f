package clampwise.facts.layout;

import clampwise.job.Building;
import clampwise.job.Building.RoofShape;
import clampwise.job.Site;
import clampwise.job.Site.LoadCode;
import java.util.Optional;

/** Planes of a building of 60 ft by 100 ft, h = 20 ft, whose a is 6 ft. */
final class WindJobs {

  private static final double FOOT_MM = 304.8;

  private WindJobs() {}

  /** Gives a job its roof. The size: along and up in plan [ft], slope [degrees]. */
  static void roof(Jobs job, RoofShape shape, LoadCode code, double[] size) {
    job.slope = Optional.of(Jobs.degrees(size[2]));
    double upMm = size[1] * FOOT_MM / Math.cos(Math.toRadians(size[2]));
    job.size = Jobs.size(size[0] * FOOT_MM, upMm);
    job.site = Optional.of(site(code));
    job.building =
        Optional.of(
            new Building(
                Optional.of(Jobs.choice(shape)),
                Optional.of(Jobs.mm(100 * FOOT_MM)),
                Optional.of(Jobs.mm(60 * FOOT_MM)),
                Optional.empty(),
                Optional.of(Jobs.mm(20 * FOOT_MM)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
  }

  private static Site site(LoadCode code) {
    Site.Codes codes =
        new Site.Codes(Optional.of(Jobs.choice(code)), Optional.empty(), Optional.empty());
    return new Site(
        Optional.of(codes),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
