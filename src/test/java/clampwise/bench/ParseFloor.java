package clampwise.bench;

import clampwise.source.Problems;
import clampwise.source.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;

/**
 * The least that any reviewer of job files has to do: find the files of a folder and parse them,
 * with the parser that clampwise uses, on so many cores; run by bench/many-jobs.sh.
 */
public final class ParseFloor {

  private ParseFloor() {}

  /** Folder and cores. */
  public static void main(String[] arguments) throws Exception {
    ExecutorService cores = Executors.newFixedThreadPool(Integer.parseInt(arguments[1]));
    List<Future<Boolean>> parsed = new ArrayList<>();
    for (Path job : jobs(Path.of(arguments[0]))) {
      parsed.add(cores.submit(() -> parse(job)));
    }
    System.out.println(count(parsed) + " of " + parsed.size() + " jobs parsed");
    cores.shutdown();
  }

  private static List<Path> jobs(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> file.endsWith("job.yaml") && !file.toString().contains("drafts"))
          .sorted()
          .toList();
    }
  }

  private static boolean parse(Path job) throws IOException {
    Problems problems = new Problems();
    return YamlReader.readPart(job.toString(), Files.readAllBytes(job), problems)
        .root()
        .isPresent();
  }

  private static int count(List<Future<Boolean>> parsed)
      throws InterruptedException, ExecutionException {
    int count = 0;
    for (Future<Boolean> one : parsed) {
      count += one.get() ? 1 : 0;
    }
    return count;
  }
}
