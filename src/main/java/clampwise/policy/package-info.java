/** What a house asks of its jobs beyond the shipped rules: severities, codes, limits, documents. */
@org.jspecify.annotations.NullMarked
package clampwise.policy;
