package clampwise.cli;

import clampwise.calc.trail.Measure;
import java.util.List;
import java.util.Optional;

/**
 * How a calculation was asked for.
 *
 * @param words name and inputs
 * @param measure units of the output, if they were chosen
 * @param json whether the output is JSON
 */
record CalcOptions(List<String> words, Optional<Measure> measure, boolean json) {}
