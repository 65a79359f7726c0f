package clampwise.docs;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** A shell in a folder of its own, in which {@code clampwise} is the program under test. */
record Shell(Path home, Path folder) {
  private static final int MOST_MINUTES = 3;

  /** What a command did. */
  record Result(String output, int code) {}

  static Shell in(Path home) throws IOException {
    Path bin = Files.createDirectories(home.resolve("bin"));
    Path program = bin.resolve("clampwise");
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Files.writeString(
        program,
        "#!/bin/sh\nexec '%s' -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Dclampwise.columns=0 -cp '%s' clampwise.cli.Main \"$@\"\n"
            .formatted(java, System.getProperty("java.class.path")));
    Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
    return new Shell(home, Files.createDirectories(home.resolve("work")));
  }

  Result run(String command) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder("bash", "-c", command);
    Map<String, String> environment = builder.environment();
    environment.put("PATH", home.resolve("bin") + ":" + environment.get("PATH"));
    environment.put("HOME", home.toString());
    environment.put("XDG_CACHE_HOME", home.resolve("cache").toString());
    environment.put("XDG_CONFIG_HOME", home.resolve("config").toString());
    environment.put("GIT_CONFIG_NOSYSTEM", "1");
    environment.remove("CLAMPWISE_OWN_RULES");
    environment.remove("JAVA_TOOL_OPTIONS");
    Path out = home.resolve("out.txt");
    Process process =
        builder
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(out.toFile())
            .start();
    if (!process.waitFor(MOST_MINUTES, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new AssertionError("no end of " + command);
    }
    return new Result(Files.readString(out, UTF_8), process.exitValue());
  }
}
