package clampwise.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The program as a process of its own.
 *
 * @param folder where it is called
 * @param variables what its environment has beside ours
 * @param java options of Java
 */
record Program(Path folder, Map<String, String> variables, List<String> java) {

  /** What a run of it said. */
  record Said(int code, String out, String err) {}

  static Program in(Path folder) {
    return new Program(folder, Map.of(), List.of());
  }

  Program with(String variable, String value) {
    Map<String, String> all = new TreeMap<>(variables);
    all.put(variable, value);
    return new Program(folder, all, java);
  }

  Program java(String... options) {
    return new Program(folder, variables, List.of(options));
  }

  /** Starts it; its streams are pipes. */
  ProcessBuilder command(String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-XX:TieredStopAtLevel=1");
    command.add("-XX:+UseSerialGC");
    command.add("-Dclampwise.columns=0"); // as the launcher says of a pipe
    command.addAll(java);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), "clampwise.cli.Main"));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
    builder.environment().putAll(variables);
    return builder;
  }

  /** Runs it to its end. */
  Said run(String... arguments) {
    try {
      Path err = Files.createTempFile("said", ".err");
      Process process = command(arguments).redirectError(err.toFile()).start();
      process.getOutputStream().close();
      String out = new String(process.getInputStream().readAllBytes(), UTF_8);
      Said said = new Said(process.waitFor(), out, Files.readString(err));
      Files.delete(err);
      return said;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
