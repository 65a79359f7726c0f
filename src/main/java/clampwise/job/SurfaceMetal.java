package clampwise.job;

/** Metals as they lie open to the weather and to other metals. */
public enum SurfaceMetal {
  STEEL,
  GALVANISED_STEEL,
  AL_ZN_STEEL,
  STAINLESS_STEEL,
  ALUMINIUM,
  ZINC,
  COPPER,
  TINNED_COPPER,
  BRASS,
  BRONZE,
  LEAD;

  /** A plain metal as it lies open; bare steel is rust. */
  public static SurfaceMetal of(Metal metal) {
    return switch (metal) {
      case STEEL -> STEEL;
      case ALUMINIUM -> ALUMINIUM;
      case COPPER -> COPPER;
      case ZINC -> ZINC;
      case STAINLESS_STEEL -> STAINLESS_STEEL;
    };
  }
}
