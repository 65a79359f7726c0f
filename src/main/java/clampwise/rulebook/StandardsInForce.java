package clampwise.rulebook;

import clampwise.finding.Basis;
import clampwise.job.Choice;
import clampwise.job.ElectricalCode;
import clampwise.job.Job;
import clampwise.job.Site;
import clampwise.job.Site.LoadCode;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which load standards and electrical codes hold where a job stands. A rule names the clause of
 * each that it rests on; a finding cites those of the site.
 *
 * @param code the load standard that the job names, if it names one
 * @param electrical the electrical code that the job names, if it names one
 */
record StandardsInForce(Optional<LoadCode> code, Optional<ElectricalCode> electrical) {

  /** The key of ASCE 7 where its editions say the same. */
  private static final String ASCE = "asce-7";

  private static final String EUROCODES = "en-199";

  private static final String LISTINGS = "ul-";

  private static final String NEC = ElectricalCode.NEC_2023.document();

  static StandardsInForce of(Job job) {
    return new StandardsInForce(
        job.site().flatMap(Site::codes).flatMap(Site.Codes::loads).map(Choice::value),
        ElectricalCode.inForce(job));
  }

  /** Whether a document holds at the site; every document does that is no standard of these. */
  boolean hold(Basis basis) {
    return holdsForLoads(basis) && holdsForWires(basis) && holdsForParts(basis);
  }

  /** Parts are listed to standards of the United States where its load standard holds. */
  private boolean holdsForParts(Basis basis) {
    return !isEurocode() || !basis.key().startsWith(LISTINGS);
  }

  private boolean holdsForWires(Basis basis) {
    boolean code =
        Stream.of(ElectricalCode.values()).anyMatch(any -> any.document().equals(basis.key()));
    return !code
        || electrical
            .map(own -> own.document().equals(basis.key()))
            .orElse(!isEurocode() || !basis.key().equals(NEC));
  }

  private boolean holdsForLoads(Basis basis) {
    boolean american = basis.key().startsWith(ASCE);
    boolean european = basis.key().startsWith(EUROCODES);
    if (code.isEmpty() || !american && !european) {
      return true;
    }
    return isEurocode() ? european : inForce(basis).key().equals(Choice.word(code.get()));
  }

  private boolean isEurocode() {
    return code.filter(LoadCode.EN_1991::equals).isPresent();
  }

  /** A basis in the edition in force, where it stands for several. */
  Basis inForce(Basis basis) {
    return code.filter(known -> basis.key().equals(ASCE) && !isEurocode())
        .map(Choice::word)
        .map(key -> new Basis(key, "", basis.clause(), basis.obtained(), basis.validity()))
        .orElse(basis);
  }
}
