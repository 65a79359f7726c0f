package clampwise.facts.roof;

import clampwise.job.Choice;
import clampwise.job.Job;
import clampwise.job.Loads;
import clampwise.job.Quantity.Factor;
import clampwise.job.Site;
import clampwise.job.Site.LoadCode;
import clampwise.job.Tested;
import clampwise.units.QuantityPrint;
import java.util.Optional;

/** The factor between an ultimate load and what the loads on the array are held against. */
enum FactorOfTest {
  SAFETY("safety-factor", "safety factor", "allowable"),
  RESISTANCE("resistance-factor", "resistance factor", "design strengths");

  private final String key;
  private final String words;
  private final String made;

  FactorOfTest(String key, String words, String made) {
    this.key = key;
    this.words = words;
    this.made = made;
  }

  /** The factor that the method of the loads asks for; none if the method cannot be read. */
  static Optional<FactorOfTest> of(Job job) {
    if (job.site()
        .flatMap(Site::codes)
        .flatMap(Site.Codes::loads)
        .filter(FactorOfTest::isEn)
        .isPresent()) {
      return Optional.of(RESISTANCE);
    }
    if (job.unreadable().touches("loads", "method")) {
      return Optional.empty();
    }
    return Optional.of(
        job.loads()
            .flatMap(Loads::method)
            .filter(method -> method.value() == Loads.Method.LRFD)
            .map(method -> RESISTANCE)
            .orElse(SAFETY));
  }

  private static boolean isEn(Choice<LoadCode> code) {
    return code.value() == LoadCode.EN_1991;
  }

  String key() {
    return key;
  }

  Optional<Factor> of(Tested row) {
    return this == SAFETY ? row.safetyFactor() : row.resistanceFactor();
  }

  private FactorOfTest other() {
    return this == SAFETY ? RESISTANCE : SAFETY;
  }

  /** What a test gives of the kind of its loads and of this factor. */
  String gives(Tested row) {
    return row.loadsAre()
        .map(loads -> "gives loads that are " + loads + ", and " + stated(row))
        .orElseGet(() -> "does not say whether its loads are allowable or ultimate" + beside(row));
  }

  private String stated(Tested row) {
    return of(row)
        .map(factor -> "a " + words + " of " + printed(factor))
        .orElseGet(() -> lacks(row));
  }

  private String lacks(Tested row) {
    return "no " + words + " to make them " + made + other().beside(row);
  }

  private String beside(Tested row) {
    return of(row)
        .map(factor -> " (it states a " + words + " of " + printed(factor) + ")")
        .orElse("");
  }

  private static String printed(Factor factor) {
    return QuantityPrint.trimmed(factor.value(), 4);
  }
}
