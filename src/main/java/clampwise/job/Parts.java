package clampwise.job;

/** Parts by kind and name, written out in a job or in the catalogue. */
public record Parts(
    @Doc("Clamps that grip a standing seam.") Named<SeamClamp> seamClamps,
    @Doc("Brackets that sit on a rib or crest.") Named<RibBracket> ribBrackets,
    @Doc("Clamps between two modules of a column.") Named<ModuleClamp> midClamps,
    @Doc("Clamps at the end of a column.") Named<ModuleClamp> endClamps,
    @Doc("Bonding jumpers.") Named<BondingPart> jumpers,
    @Doc("Grounding lugs.") Named<BondingPart> lugs,
    @Doc("Wire clips.") Named<WireClip> wireClips) {}
