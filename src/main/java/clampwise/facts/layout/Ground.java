package clampwise.facts.layout;

import java.util.Optional;

/**
 * What a field stands on, for finding places.
 *
 * @param plane name of the plane
 * @param seams its seams and minor ribs
 * @param zones its wind zones
 * @param zonesUnknown why the wind zones are not known, if they are not
 */
record Ground(String plane, SeamMap seams, ZoneLookup zones, Optional<String> zonesUnknown) {}
