package clampwise.facts.bonding;

import clampwise.facts.layout.PlacedModule;
import java.util.Optional;

/**
 * Two frames that a part joins.
 *
 * @param doubt why it is not known whether the part bonds them, if it is not
 */
record Joint(PlacedModule one, PlacedModule other, Optional<String> doubt) {}
