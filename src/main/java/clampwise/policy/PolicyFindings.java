package clampwise.policy;

import clampwise.finding.Finding;
import clampwise.finding.HouseRule;
import clampwise.finding.HouseRule.Words;
import clampwise.finding.Severity;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Documents;
import clampwise.job.Documents.SheetKind;
import clampwise.job.Editions;
import clampwise.job.ElectricalCode;
import clampwise.job.Fire;
import clampwise.job.Job;
import clampwise.job.Named;
import clampwise.job.Site;
import clampwise.job.Text;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a policy asks of a job itself, and by which of its limits more may pass. */
public final class PolicyFindings {

  private static final String CODES = "site.codes";

  private final Job job;
  private final Policy policy;
  private final List<Finding> found = new ArrayList<>();

  private PolicyFindings(Job job, Policy policy) {
    this.job = job;
    this.policy = policy;
  }

  /** The findings of a job under a policy; none where there is no policy. */
  public static List<Finding> of(Job job, Policy policy) {
    if (policy.file().isEmpty()) {
      return List.of();
    }
    PolicyFindings findings = new PolicyFindings(job, policy);
    policy.file().flatMap(PolicyFile::codes).ifPresent(findings::askCodes);
    policy.file().ifPresent(findings::askDocuments);
    findings.found.addAll(LooserLimits.of(policy));
    return findings.weighed();
  }

  private List<Finding> weighed() {
    List<Finding> kept = new ArrayList<>();
    for (Finding finding : found) {
      Severity weight = policy.weights().of(finding.rule(), finding.severity());
      kept.add(finding.weighing(weight));
    }
    return kept;
  }

  private void askCodes(PolicyFile.Codes codes) {
    Optional<Site.Codes> site = job.site().flatMap(Site::codes);
    codes
        .loads()
        .flatMap(text -> Editions.of(Site.LoadCode.values(), text.value()))
        .ifPresent(
            code ->
                site.flatMap(Site.Codes::loads)
                    .ifPresent(own -> compare("loads", code, own.value(), own.at())));
    codes
        .electrical()
        .flatMap(text -> Editions.of(ElectricalCode.values(), text.value()))
        .ifPresent(
            code ->
                ElectricalCode.inForce(job)
                    .ifPresent(own -> compare("electrical", code, own, electricalAt())));
    codes
        .fire()
        .flatMap(text -> Editions.of(Fire.RuleSet.values(), text.value()))
        .ifPresent(code -> askFire(code, site));
  }

  private Span electricalAt() {
    return job.electrical()
        .flatMap(electrical -> electrical.code())
        .map(Choice::at)
        .orElseGet(() -> job.at("site", "codes", "electrical"));
  }

  private void askFire(Fire.RuleSet code, Optional<Site.Codes> site) {
    Optional<Choice<Fire.RuleSet>> own = job.fire().flatMap(Fire::rules);
    Optional<Text> named = site.flatMap(Site.Codes::fire);
    if (own.isPresent()) {
      compare("fire", code, own.get().value(), own.get().at());
    } else if (named.isPresent()) {
      Editions.of(Fire.RuleSet.values(), named.get().value())
          .ifPresent(read -> compare("fire", code, read, named.get().at()));
    }
  }

  private void compare(String kind, Enum<?> asked, Enum<?> own, Span at) {
    if (asked != own) {
      String message =
          "the job stands under "
              + Choice.word(own)
              + "; the policy asks for "
              + Choice.word(asked)
              + " ("
              + codesAt(kind)
              + ")";
      String remedy = "review it under " + Choice.word(asked) + ", or settle it in the policy";
      found.add(
          HouseRule.CODE_OTHER_THAN_POLICY.found(
              Subject.of(CODES).part(kind), at, new Words(message, remedy)));
    }
  }

  private String codesAt(String kind) {
    return policy
        .written()
        .mapping("codes")
        .flatMap(codes -> codes.get(kind))
        .map(node -> node.at().toString())
        .orElse("codes");
  }

  private void askDocuments(PolicyFile file) {
    for (Named.Item<Choice<PolicyFile.Need>> item : file.documents().all()) {
      if (item.value().value() == PolicyFile.Need.REQUIRED) {
        askDocument(item.name());
      }
    }
  }

  private void askDocument(Text kind) {
    boolean readable = !job.unreadable().touches("documents");
    if (!readable || listed(kind.value())) {
      return;
    }
    String words = kind.value().replace('-', ' ');
    String where =
        job.documents().isEmpty()
            ? "the job lists no documents (documents.sheets)"
            : "none of the documents listed is one";
    Words said =
        new Words(
            "the policy asks for a document of the kind "
                + words
                + " ("
                + kind.at()
                + "); "
                + where,
            "add the " + words + " to documents.sheets once the package has it");
    found.add(
        HouseRule.DOCUMENT_ASKED_BY_POLICY.found(
            Subject.of("documents", words), job.at("documents", "sheets"), said));
  }

  private boolean listed(String kind) {
    for (SheetKind one : SheetKind.values()) {
      if (Choice.word(one).equals(kind)) {
        return job.documents().map(documents -> has(documents, one)).orElse(false);
      }
    }
    return true;
  }

  private static boolean has(Documents documents, SheetKind kind) {
    return documents.sheets().all().stream()
        .anyMatch(sheet -> sheet.value().kind().value() == kind);
  }
}
