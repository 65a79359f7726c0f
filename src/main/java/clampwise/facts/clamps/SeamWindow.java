package clampwise.facts.clamps;

import clampwise.facts.layout.PlacedModule;

/**
 * How far a module may shift along the eave, either way, until no seam falls in its clamp zone on
 * one of its halves.
 *
 * @param module the module
 * @param slackM the shift [m]; as far as was asked where it bears more, or where it is outside
 *     already
 */
public record SeamWindow(PlacedModule module, double slackM) {}
