package clampwise.facts.layout;

import clampwise.job.Field;
import clampwise.job.ModuleClamp;
import clampwise.job.ModuleType;
import clampwise.job.RoofAttachment;
import clampwise.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * A field with its modules and attachments in place.
 *
 * @param name its name in the job
 * @param field what the designer wrote
 * @param typeName name of its module type
 * @param type its module type
 * @param part its seam clamp or rib bracket, if named and known
 * @param midClamp its mid clamp, if named and known
 * @param endClamp its end clamp, if named and known
 * @param columnGapM gap between columns [m]
 * @param rowGapM gap between rows [m]
 * @param modules by column, then by row
 * @param lines number n is at index n-1: where the lines lie [m up]
 * @param attachments in order of line, then left to right
 * @param edges supported edges of all modules, lower before upper, in the order of the modules
 * @param attachmentsUnknown why the attachments are not known, if they are not, such as {@code
 *     field A has no attachment schedule}; the list of attachments is then empty and means nothing
 * @param at where the field was written
 */
public record FieldLayout(
    String name,
    Field field,
    String typeName,
    ModuleType type,
    Optional<RoofAttachment> part,
    Optional<ModuleClamp> midClamp,
    Optional<ModuleClamp> endClamp,
    double columnGapM,
    double rowGapM,
    List<PlacedModule> modules,
    List<Double> lines,
    List<Attachment> attachments,
    List<ModuleEdge> edges,
    Optional<String> attachmentsUnknown,
    Span at) {}
