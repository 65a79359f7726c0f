package clampwise.facts.layout;

import java.util.List;
import java.util.Optional;

/**
 * Wind zones of a plane, or why they are not known.
 *
 * @param areas the zones; empty if they are not known
 * @param lookup finds them by place
 * @param unknown why they are not known, if they are not
 */
record WindZones(List<ZoneArea> areas, ZoneLookup lookup, Optional<String> unknown) {

  static WindZones of(List<ZoneArea> areas) {
    return new WindZones(areas, new ZoneLookup(areas), Optional.empty());
  }

  static WindZones unknown(String why) {
    return new WindZones(List.of(), new ZoneLookup(List.of()), Optional.of(why));
  }
}
