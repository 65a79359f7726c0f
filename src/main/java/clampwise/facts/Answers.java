package clampwise.facts;

import clampwise.finding.Subject;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.List;

/** Where questions put their answers. */
public final class Answers {

  private final List<Fact> facts = new ArrayList<>();
  private final List<Missing> missing = new ArrayList<>();

  public void add(Fact fact) {
    facts.add(fact);
  }

  public void missing(Class<? extends Fact> question, Subject subject, String reason, Span at) {
    missing.add(new Missing(question, subject, reason, at));
  }

  void addAll(Answers others) {
    facts.addAll(others.facts);
    missing.addAll(others.missing);
  }

  public List<Fact> facts() {
    return List.copyOf(facts);
  }

  public List<Missing> missing() {
    return List.copyOf(missing);
  }
}
