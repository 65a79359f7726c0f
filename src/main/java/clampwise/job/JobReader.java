package clampwise.job;

import clampwise.source.Nearest;
import clampwise.source.Node;
import clampwise.source.Position;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.SourceFiles;
import clampwise.source.SourceText;
import clampwise.source.Span;
import clampwise.source.YamlReader;
import java.nio.file.Path;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a job file. All problems of a file are reported at once, each at its place, and what could
 * be read is given back.
 */
public final class JobReader {

  private JobReader() {}

  /** Gets ready for the first job; may be done on another core while the program starts. */
  public static void prepare() {
    Binding.prepare();
  }

  /** The job of a file; files it names lie in the same folder. */
  public static Optional<Job> read(Path file, Problems problems) {
    return read(file, SourceFiles.beside(file), problems);
  }

  /**
   * The job of a file.
   *
   * @param files the files beside it, which keep what is read
   */
  public static Optional<Job> read(Path file, SourceFiles files, Problems problems) {
    String name = SourceFiles.nameOf(file);
    return SourceFiles.read(file, problems).flatMap(bytes -> read(name, bytes, files, problems));
  }

  /**
   * The job of some bytes, such as standard input.
   *
   * @param name name of the text in messages
   * @param files where the files lie that it names
   */
  public static Optional<Job> read(
      String name, byte[] bytes, SourceFiles files, Problems problems) {
    files.take(new SourceText(name, bytes));
    YamlReader.Part part = YamlReader.readPart(name, bytes, problems);
    return read(part, files, problems);
  }

  /**
   * The job of a file where a house writes something for jobs that do not say it themselves.
   *
   * @param under what stands where the job says nothing, each value with its place
   */
  public static Optional<Job> read(
      SourceText text, Node.Mapping under, SourceFiles files, Problems problems) {
    files.take(text);
    YamlReader.Part part = YamlReader.readPart(text.file(), text.bytes(), problems);
    Optional<Node> root =
        part.root().map(job -> job instanceof Node.Mapping ? laid(under, job) : job);
    return read(new YamlReader.Part(root, part.brokenAt()), files, problems);
  }

  /** The job keeps its own order and place, whatever is laid beneath it. */
  private static Node laid(Node.Mapping under, Node job) {
    Node.Mapping laid = (Node.Mapping) job;
    for (Node.Entry entry : under.entries()) {
      String key = entry.key().text();
      Optional<Node> own = laid.get(key);
      laid = laid.with(key, own.isPresent() ? beneath(entry.value(), own.get()) : entry.value());
    }
    return laid;
  }

  private static Node beneath(Node under, Node own) {
    if (own.isEmpty()) {
      return under;
    }
    return under instanceof Node.Mapping section && own instanceof Node.Mapping
        ? laid(section, own)
        : own;
  }

  /** The job of a text that names no files. */
  public static Optional<Job> read(String name, String text, Problems problems) {
    YamlReader.Part part = YamlReader.readPart(name, text, problems);
    return read(part, SourceFiles.none(), problems);
  }

  /** The job of a tree of values, such as a rule page's example laid over its base job. */
  public static Optional<Job> read(String name, Node root, Problems problems) {
    return read(
        new YamlReader.Part(Optional.of(root), Optional.empty()), SourceFiles.none(), problems);
  }

  private static Optional<Job> read(YamlReader.Part part, SourceFiles files, Problems problems) {
    if (part.root().isEmpty()) {
      return Optional.empty();
    }
    if (!(part.root().get() instanceof Node.Mapping root)) {
      Node node = part.root().get();
      problems.add(
          Problem.of(
              node.at(), Reading.found(node), "a job: a mapping with keys such as job, planes"));
      return Optional.empty();
    }
    Optional<Reading.Break> broken = part.brokenAt().map(at -> Reading.Break.of(root, at));
    Optional<Job> job = bind(withName(root, part.brokenAt(), problems), broken, files, problems);
    // A job cut off by a syntax error would be judged for what its missing part says.
    return part.brokenAt().isEmpty() ? job : Optional.empty();
  }

  /** A job is reviewed even if its name is missing, which is a problem all the same. */
  private static Node.Mapping withName(
      Node.Mapping root, Optional<Position> brokenAt, Problems problems) {
    if (root.get("job").filter(name -> !name.isEmpty()).isPresent()) {
      return root;
    }
    if (brokenAt.isEmpty() && !isMisspelt(root)) {
      String expected = "the key job with the name on the drawings";
      problems.add(Problem.of(root.at(), "a job without a name", expected));
    }
    Span start = Span.startOf(root.at().file());
    return root.without("job").with("job", new Node.Scalar("(no name)", true, start));
  }

  /** Whether an unknown key, which is a problem of its own, most likely means the name. */
  private static boolean isMisspelt(Node.Mapping root) {
    Set<String> known = Shape.of(Job.class).byKey().keySet();
    return root.entries().stream()
        .map(entry -> entry.key().text())
        .filter(key -> !known.contains(key))
        .anyMatch(key -> Nearest.to(key, known).filter("job"::equals).isPresent());
  }

  private static Optional<Job> bind(
      Node.Mapping root, Optional<Reading.Break> broken, SourceFiles files, Problems problems) {
    Set<Node> reported = Collections.newSetFromMap(new IdentityHashMap<>());
    Node.Mapping liked =
        root.mapping("fields")
            .map(fields -> root.with("fields", LikeFields.resolve(fields, reported, problems)))
            .orElse(root);
    Lost lost = new Lost();
    new KeyChecks(lost, problems).in(liked);
    Node.Mapping whole = broken.isEmpty() ? new CsvValues(files, lost, problems).in(liked) : liked;
    Reading reading =
        new Reading(problems, DeclaredUnits.of(root, problems), broken, reported, lost);
    return Binding.bind(whole, Job.class, reading)
        .filter(job -> ModuleGuard.holds(job, problems))
        .map(job -> job.without(lost.in(whole)));
  }
}
