package clampwise.facts.layout;

import java.util.Optional;

/**
 * What a field stands on, for finding places.
 *
 * @param seams its seams and minor ribs
 * @param seamsUnknown why the seams are not known, where they are not
 * @param zones its wind zones
 * @param zonesUnknown why the wind zones are not known, if they are not
 */
record Ground(
    SeamMap seams, String seamsUnknown, ZoneLookup zones, Optional<String> zonesUnknown) {}
