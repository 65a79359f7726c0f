package clampwise.facts.bonding;

import clampwise.source.Span;

/**
 * A jumper that does not reach from frame to frame.
 *
 * @param joint the frames that it was to join
 * @param at where it is written
 */
record ShortTie(Joint joint, Span at) {}
