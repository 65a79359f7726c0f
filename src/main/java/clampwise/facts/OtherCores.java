package clampwise.facts;

import java.util.concurrent.Executor;
import java.util.concurrent.Executors;

/**
 * The cores beside the one that runs the review. Work waits in line, so that what is needed first
 * is done first; the common pool of a machine with two cores would start everything at once.
 */
public final class OtherCores {

  private static final Executor EXECUTOR =
      Executors.newFixedThreadPool(
          Math.max(1, Runtime.getRuntime().availableProcessors() - 1), OtherCores::thread);

  private OtherCores() {}

  /** Runs work beside the review; must not wait for other work handed in here. */
  public static Executor executor() {
    return EXECUTOR;
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "beside");
    thread.setDaemon(true);
    return thread;
  }
}
