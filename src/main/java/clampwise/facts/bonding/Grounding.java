package clampwise.facts.bonding;

import clampwise.facts.layout.PlacedModule;
import java.util.Optional;

/**
 * A frame with a lug.
 *
 * @param doubt why it is not known whether the lug bonds, if it is not
 */
record Grounding(PlacedModule frame, Optional<String> doubt) {}
