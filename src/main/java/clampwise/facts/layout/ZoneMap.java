package clampwise.facts.layout;

import clampwise.job.Job;
import clampwise.job.Named;
import clampwise.job.Plane;

/** Draws the wind zones of a plane. */
final class ZoneMap {

  private final Job job;

  ZoneMap(Job job) {
    this.job = job;
  }

  WindZones of(Named.Item<Plane> plane, Outline outline) {
    return WindZones.unknown("wind zones are not drawn yet");
  }
}
