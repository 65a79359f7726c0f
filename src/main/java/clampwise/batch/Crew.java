package clampwise.batch;

import clampwise.facts.OtherCores;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.IntFunction;

/**
 * Does many works at once and hands out their results in their order, whichever is done first. Each
 * work runs on one core, and only so many results wait as keep the cores busy behind a long work.
 *
 * @param cores how many works run at once
 */
public record Crew(int cores) {

  private static final int MOST_WAITING = 64;

  /** As many cores as this process may use. */
  public static Crew ofAllCores() {
    return new Crew(Runtime.getRuntime().availableProcessors());
  }

  /**
   * Does works.
   *
   * @param count how many there are
   * @param work the work of a number, from 0
   * @param inOrder takes the results on the thread that called; if it throws, the rest is left
   */
  public <T> void run(int count, IntFunction<T> work, Consumer<T> inOrder) {
    ExecutorService workers =
        Executors.newFixedThreadPool(Math.max(1, Math.min(cores, count)), Crew::thread);
    try {
      Deque<Future<T>> waiting = new ArrayDeque<>();
      for (int next = 0; next < count || !waiting.isEmpty(); ) {
        while (next < count && waiting.size() < MOST_WAITING) {
          int number = next++;
          waiting.add(workers.submit(() -> OtherCores.without(() -> work.apply(number))));
        }
        inOrder.accept(result(waiting.remove()));
      }
    } finally {
      workers.shutdownNow();
    }
  }

  private static <T> T result(Future<T> done) {
    try {
      return done.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      if (e.getCause() instanceof Error fault) {
        throw fault;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while jobs were reviewed", e);
    }
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "job");
    thread.setDaemon(true);
    return thread;
  }
}
