package clampwise.calc.statics;

/**
 * What a loaded beam does to its supports and to itself.
 *
 * @param reactionsN force of each support against the load [N]; negative where the support has to
 *     hold the beam back (prying)
 * @param supportMomentsNm bending moment over each support [N m]; negative where the side away from
 *     the support is in tension (hogging)
 * @param spanMomentsNm greatest bending moment of each span between two supports [N m], its ends
 *     included
 */
public record BeamForces(double[] reactionsN, double[] supportMomentsNm, double[] spanMomentsNm) {}
