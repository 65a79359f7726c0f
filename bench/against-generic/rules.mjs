// The checks that both sides run, each as alternatives of which one is enough: [component, comparison, component].
// They are those of rules/<topic>/<id>.drl; that the verdicts are the same is asserted on every file.
export const rules = [
  ["allowed-spacing-wider-than-loads-allow", "AllowedSpacing", [["writtenM", ">", "computedM"]]],
  ["attachment-off-seam", "SeamOffset", [["offsetM", ">", "mostM"]]],
  ["attachment-overloaded", "AttachmentUse", [["utilisation", ">", "most"]]],
  ["clamp-outside-clamp-zone", "ZoneGrip", [["fromCornerM", "<", "zoneMinM"], ["fromCornerM", ">", "zoneMaxM"]]],
  ["clamp-reaches-over-glass", "GlassReach", [["depthM", ">", "lipM"]]],
  ["count-differs-from-drawing", "CountClaim", [["claimed", "!=", "counted"]]],
  ["frame-outside-end-clamp-range", "EndClampFit", [["frameHeightM", "<", "minM"], ["frameHeightM", ">", "maxM"]]],
  ["frame-outside-mid-clamp-range", "MidClampFit", [["frameHeightM", "<", "minM"], ["frameHeightM", ">", "maxM"]]],
  ["jumper-too-short", "JumperReach", [["lengthM", "<", "gapM"]]],
  ["module-above-design-rating", "ModuleUse", [["demandPa", ">", "ratedPa"]]],
  ["module-gap-too-small", "ModuleGap", [["gapM", "<", "leastM"]]],
  ["row-gap-narrower-than-mid-clamp", "ClampWidth", [["gapM", "<", "leastM"]]],
  ["row-gap-wider-than-mid-clamp-holds", "WidestGap", [["gapM", ">", "mostM"]]],
  ["seam-size-outside-clamp-range", "SeamSizeFit", [["sizeM", "<", "minM"], ["sizeM", ">", "maxM"]]],
  ["spacing-wider-than-zone-allows", "LineSpacing", [["spacingM", ">", "allowedM"]]],
  ["too-few-clamps-on-module", "ClampsOnModule", [["clamps", "<", "least"], ["onWeakestEdge", "<", "perEdgeLeast"]]],
].map(([id, type, any]) => ({ id, type, any }));

const OPERATORS = { "<": "lessThan", ">": "greaterThan", "!=": "notEqual" };

// As json-rules-engine wants them.
export function engineRule({ id, any }) {
  return {
    conditions: {
      any: any.map(([fact, operator, other]) => ({
        fact,
        operator: OPERATORS[operator],
        value: { fact: other },
      })),
    },
    event: { type: id },
  };
}

// As Spectral wants them: whatever the path finds is a defect.
export function spectralRule({ id, type, any }) {
  const filter = any.map(([fact, operator, other]) => `@.${fact} ${operator} @.${other}`).join(" || ");
  return {
    message: id,
    severity: "error",
    given: `$.facts.${type}[?(${filter})]`,
    then: { function: "falsy" },
  };
}
