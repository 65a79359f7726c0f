package clampwise.policy;

import clampwise.finding.Severity;
import clampwise.finding.Threshold;
import clampwise.finding.Weights;
import clampwise.job.Choice;
import clampwise.job.Named;
import clampwise.policy.PolicyFile.Weight;
import clampwise.source.Node;
import clampwise.source.Problem;
import clampwise.source.SourceText;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The policy in force for a job: all policy files that hold for it, the inner laid over the outer.
 *
 * @param file what they say together; nothing where there is no policy
 * @param written the same as a tree, in which every value knows the file that says it
 * @param sources the files as they were read, the outermost first
 * @param limits house limits by name
 * @param problems what could not be read of them
 */
public record Policy(
    Optional<PolicyFile> file,
    Node.Mapping written,
    List<SourceText> sources,
    HouseLimits limits,
    List<Problem> problems) {

  /** No policy: the rules as they ship. */
  public static final Policy NONE =
      new Policy(Optional.empty(), Underlay.EMPTY, List.of(), HouseLimits.NONE, List.of());

  /** From which severity on a finding fails the run, if the house says so. */
  public Optional<Threshold> failOn() {
    return file.flatMap(PolicyFile::failOn).map(Choice::value);
  }

  /** What the rules weigh here. */
  public Weights weights() {
    Map<String, Severity> severities = new HashMap<>();
    Map<String, Weights.Off> off = new HashMap<>();
    for (Named.Item<PolicyFile.Rule> rule : rules().all()) {
      String id = rule.name().value();
      PolicyFile.Rule says = rule.value();
      if (says.severity().value() == Weight.OFF) {
        off.put(id, new Weights.Off(says.reason().value(), says.severity().at()));
      } else {
        severities.put(id, Severity.valueOf(says.severity().value().name()));
      }
    }
    return severities.isEmpty() && off.isEmpty() ? Weights.SHIPPED : new Weights(severities, off);
  }

  /** What the house says about rules, by rule id. */
  public Named<PolicyFile.Rule> rules() {
    return file.map(PolicyFile::rules).orElse(Named.none());
  }

  /** What a job that says nothing of its own stands under: its codes. */
  public Optional<Node.Mapping> underlay() {
    return file.flatMap(PolicyFile::codes).flatMap(codes -> Underlay.of(codes));
  }

  /** A word that differs where anything in its files differs. */
  public String digest() {
    StringBuilder all = new StringBuilder();
    for (SourceText source : sources) {
      all.append(source.file()).append(' ').append(source.sha256()).append('\n');
    }
    return all.toString();
  }
}
