package clampwise.facts.layout;

import clampwise.source.Span;
import java.util.Set;

/**
 * One column of a field before its modules are placed.
 *
 * @param number counted along the eave from 1
 * @param leftM left side [m along]
 * @param bottomM lower side of its first place [m up]
 * @param places places, counted up the slope
 * @param empty places left empty, from 1
 * @param at where the block or column was written
 */
record ColumnPlan(
    int number, double leftM, double bottomM, int places, Set<Integer> empty, Span at) {}
