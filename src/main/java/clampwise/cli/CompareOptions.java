package clampwise.cli;

import clampwise.finding.Threshold;
import java.util.Optional;

/**
 * What is compared with what.
 *
 * @param old a file, a folder, {@code REV:PATH}, or a revision of the second word's path
 * @param now a file, a folder, {@code REV:PATH} or a revision
 * @param markdown whether it is written as Markdown
 * @param failOn severity from which on what is new or worse fails the run
 */
record CompareOptions(String old, String now, Optional<Threshold> failOn, boolean markdown) {}
