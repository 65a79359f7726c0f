package clampwise.facts;

import clampwise.facts.layout.Layout;
import java.util.List;

/** Everything derived from a job. */
public record Facts(Layout layout, List<Fact> facts, List<Missing> missing) {}
