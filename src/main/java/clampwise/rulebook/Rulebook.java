package clampwise.rulebook;

import clampwise.facts.Facts;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import org.drools.model.Model;

/** All rules: facts in, findings out. May be shared by several threads. */
public final class Rulebook {
  private final Engine engine;

  private Rulebook(Engine engine) {
    this.engine = engine;
  }

  /** The rules that ship with the program. */
  public static Rulebook builtIn() {
    return of(RuleIndex.lines(RuleIndex.MODELS).stream().map(Rulebook::model).toList());
  }

  /** The rules that ship with the program, ready for the first job. */
  public static Rulebook prepared() {
    Rulebook rulebook = builtIn();
    rulebook.engine.prepare();
    return rulebook;
  }

  /** Rules compiled elsewhere. */
  public static Rulebook of(List<Model> models) {
    return new Rulebook(Engine.of(models));
  }

  /** What each rule says of itself, in order of their ids. */
  public List<RuleCard> cards() {
    return engine.cards();
  }

  /** Holds all facts against all rules. */
  public Judgement judge(Facts facts) {
    return new Verdict(cards(), facts, engine.apply(facts.facts())).judgement();
  }

  private static Model model(String className) {
    try {
      return (Model) Class.forName(className).getDeclaredConstructor().newInstance();
    } catch (ClassNotFoundException
        | NoSuchMethodException
        | InstantiationException
        | IllegalAccessException
        | InvocationTargetException e) {
      throw new IllegalStateException("the compiled rules are incomplete: " + className, e);
    }
  }
}
