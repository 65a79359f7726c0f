package clampwise.facts.layout;

import java.util.List;
import java.util.Optional;

/** Wind zones of a plane, or why they are not known. */
record WindZones(List<ZoneArea> areas, Optional<String> unknown) {

  static WindZones of(List<ZoneArea> areas) {
    return new WindZones(areas, Optional.empty());
  }

  static WindZones unknown(String why) {
    return new WindZones(List.of(), Optional.of(why));
  }
}
