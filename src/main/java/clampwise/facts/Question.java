package clampwise.facts;

import clampwise.catalogue.Limits;
import clampwise.facts.layout.Layout;

/** Derives all facts of one kind from a layout. */
@FunctionalInterface
public interface Question {

  /** Answers the question for every subject of the layout it applies to. */
  void ask(Layout layout, Limits limits, Answers answers);
}
