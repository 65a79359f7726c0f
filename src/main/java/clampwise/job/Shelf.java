package clampwise.job;

/** Parts and module types of a catalogue, in the keys of a job file. */
public record Shelf(
    @Doc("Parts, by kind and name.") Parts parts,
    @Doc("Module types, by name.") Named<ModuleType> modules) {}
