package clampwise.cli;

import clampwise.rulebook.OwnRules;
import clampwise.rulebook.RulePage;
import clampwise.rulebook.own.OwnRulesReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which folder of own rules a run uses: that of the option, else of the environment, else of the
 * user's configuration. Rules are code, so nothing that is reviewed can name one.
 *
 * @param folder where they lie
 * @param by what named it
 */
record OwnRulesChoice(Path folder, String by) {

  /** Environment variable that names the folder. */
  static final String VARIABLE = "CLAMPWISE_OWN_RULES";

  static final String OPTION = "--own-rules";

  /** Option that leaves own rules out of a run. */
  static final String NONE = "--no-own-rules";

  /** What a run without options uses; nearly free when there is nothing. */
  static Optional<OwnRulesChoice> usual(Map<String, String> environment) {
    String named = environment.getOrDefault(VARIABLE, "");
    return named.isEmpty()
        ? UserConfig.ownRules(environment)
            .map(folder -> new OwnRulesChoice(folder, "own-rules of the configuration"))
        : Optional.of(new OwnRulesChoice(path(named), VARIABLE));
  }

  /** What a run uses that was asked for with options. */
  static Optional<OwnRulesChoice> of(Usage usage, Map<String, String> environment) {
    Optional<String> named = usage.value(OPTION);
    if (usage.flag(NONE)) {
      if (named.isPresent()) {
        throw new UsageException(OPTION + " or " + NONE + ", not both");
      }
      return Optional.empty();
    }
    return named.isPresent()
        ? named.map(name -> new OwnRulesChoice(path(name), OPTION))
        : usual(environment);
  }

  /** The folder of a name. */
  static OwnRulesChoice named(String name, String by) {
    return new OwnRulesChoice(path(name), by);
  }

  private static Path path(String name) {
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      throw new UsageException(name + " is not a folder name here");
    }
  }

  /** The rules, compiled unless they were compiled before. */
  OwnRules read(Map<String, String> environment) {
    try {
      Path cache = Terminals.cacheFolder(environment).resolve("own-rules");
      Optional<Path> safe = cache.isAbsolute() ? Optional.of(cache) : Optional.empty();
      return OwnRulesReader.read(folder, shown(), safe).orElseThrow(this::nothing);
    } catch (IOException e) {
      throw new UsageException(by + ": the folder " + folder + " cannot be read");
    }
  }

  /** Their pages. */
  List<RulePage> pages() {
    try {
      List<RulePage> pages = OwnRulesReader.pages(folder, shown());
      if (pages.isEmpty()) {
        throw nothing();
      }
      return pages;
    } catch (IOException e) {
      throw new UsageException(by + ": the folder " + folder + " cannot be read");
    }
  }

  String shown() {
    return folder.toString().replace('\\', '/');
  }

  private UsageException nothing() {
    return new UsageException(
        Files.isDirectory(folder)
            ? by + ": the folder " + folder + " holds no rule; see docs/own-rules.md"
            : by + ": there is no folder " + folder);
  }
}
