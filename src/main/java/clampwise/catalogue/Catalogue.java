package clampwise.catalogue;

import clampwise.job.ModuleType;
import clampwise.job.Named;
import clampwise.job.Parts;

/** Parts and module types that a job may use by name. */
public record Catalogue(Parts parts, Named<ModuleType> modules) {}
