package clampwise.proof;

import java.util.List;
import java.util.Set;

/**
 * A defect that stands in a job.
 *
 * @param at paths where its findings must point, each of them
 * @param about what the subject of a finding or of one of its places must name
 * @param also rules whose findings may follow from it
 */
record Planted(Defect defect, List<String> at, List<String> about, Set<String> also) {}
