package clampwise.job;

/** Base metals of roof sheets and parts. */
public enum Metal {
  STEEL,
  ALUMINIUM,
  COPPER,
  ZINC,
  STAINLESS_STEEL
}
