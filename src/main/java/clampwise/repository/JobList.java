package clampwise.repository;

import clampwise.finding.NaturalOrder;
import clampwise.source.Problem;
import clampwise.source.SourceFiles;
import clampwise.source.Span;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The jobs that words name: a file is itself; a folder is the jobs in it and below; a pattern is
 * the files that match it. What git ignores is left out of folders and patterns. Words keep their
 * order; the jobs of one word are in the order in which people put names. A file named twice is
 * there once.
 */
public final class JobList {

  private static final String STANDARD_INPUT = "-";

  private final List<ListedJob> jobs = new ArrayList<>();
  private final Set<Path> taken = new HashSet<>();

  private JobList() {}

  /** The jobs of some words. */
  public static List<ListedJob> of(List<String> words) {
    JobList list = new JobList();
    words.forEach(list::add);
    return list.jobs;
  }

  /** Whether a word stands for any number of jobs rather than for one file. */
  public static boolean isMany(String word) {
    return !word.equals(STANDARD_INPUT) && !isFile(word) && (isFolder(word) || isPattern(word));
  }

  private static boolean isPattern(String word) {
    return Wildcards.isPattern(word);
  }

  private static boolean isFolder(String word) {
    try {
      return Files.isDirectory(Path.of(word));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  private static boolean isFile(String word) {
    try {
      return Files.exists(Path.of(word)) && !Files.isDirectory(Path.of(word));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  private void add(String word) {
    if (!isMany(word)) {
      addFile(word);
    } else if (isFolder(word)) {
      Path folder = Path.of(word);
      FolderWalk walk =
          new FolderWalk(folder, file -> JobNames.isJob(nameOf(file)), Integer.MAX_VALUE);
      addAll(walk.go(), word, "a folder without a job");
    } else {
      addMatches(word);
    }
  }

  private static String nameOf(Path file) {
    return String.valueOf(file.getFileName());
  }

  private void addMatches(String word) {
    Wildcards pattern = Wildcards.of(word.replace(File.separatorChar, '/'));
    if (!isFolder(pattern.folder())) {
      nothing(word, "a pattern in a folder that does not exist", "a folder that exists");
      return;
    }
    FolderWalk walk = new FolderWalk(Path.of(pattern.folder()), pattern::matches, pattern.depth());
    addAll(walk.go(), word, "a pattern that no file matches");
  }

  private void addAll(FolderWalk walk, String word, String nothing) {
    List<String> names = new ArrayList<>();
    walk.found().forEach(file -> names.add(SourceFiles.nameOf(file.normalize())));
    names.sort(NaturalOrder::compare);
    names.forEach(this::addFile);
    walk.problems().forEach(one -> jobs.add(new ListedJob(one.at().file(), of(one))));
    if (names.isEmpty() && walk.problems().isEmpty()) {
      String why = walk.ignored() == 0 ? nothing : nothing + ", but for what git ignores";
      nothing(word, why, JobNames.EXPECTED);
    }
  }

  private static Optional<Problem> of(Problem problem) {
    return Optional.of(problem);
  }

  private void nothing(String word, String found, String expected) {
    Span at = Span.startOf(word.replace(File.separatorChar, '/'));
    jobs.add(new ListedJob(word, of(Problem.of(at, found, expected))));
  }

  private void addFile(String name) {
    if (name.equals(STANDARD_INPUT) || isNew(name)) {
      jobs.add(ListedJob.of(name));
    }
  }

  private boolean isNew(String name) {
    try {
      Path file = Path.of(name);
      return taken.add(Files.exists(file) ? file.toRealPath() : file.toAbsolutePath().normalize());
    } catch (InvalidPathException | IOException e) {
      return true;
    }
  }
}
