package clampwise.facts;

import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * The cores beside the one that runs the review. Work waits in line, so that what is needed first
 * is done first; who needs a result that no core has begun does the work at once instead of
 * waiting.
 */
public final class OtherCores {

  private static final int COUNT = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);

  private static final Executor EXECUTOR = Executors.newFixedThreadPool(COUNT, OtherCores::thread);

  /** Set while this thread does one of many works that keep all cores busy together. */
  private static final ThreadLocal<Boolean> ALONE = new ThreadLocal<>();

  private OtherCores() {}

  /** Does work on this thread alone, since the other cores have enough to do. */
  public static <T> T without(Supplier<T> work) {
    ALONE.set(true);
    try {
      return work.get();
    } finally {
      ALONE.remove();
    }
  }

  /** Begins work beside the review whose result is not asked for. */
  public static void begin(Runnable work) {
    EXECUTOR.execute(work);
  }

  /** Begins work beside the review; what is returned hands out its result, or its fault. */
  public static <T> Supplier<T> start(Supplier<T> work) {
    FutureTask<T> task = task(work);
    if (ALONE.get() == null) {
      EXECUTOR.execute(task);
    }
    return () -> {
      task.run();
      return result(task);
    };
  }

  /** Does works that need nothing of one another on all cores; results come in their order. */
  public static <T> List<T> all(List<Supplier<T>> works) {
    List<FutureTask<T>> tasks = works.stream().map(OtherCores::task).toList();
    int helpers = ALONE.get() == null ? Math.min(COUNT, tasks.size() - 1) : 0;
    for (int i = 0; i < helpers; i++) {
      EXECUTOR.execute(() -> tasks.forEach(FutureTask::run));
    }
    tasks.forEach(FutureTask::run);
    return tasks.stream().map(OtherCores::result).toList();
  }

  /** A task runs once, whoever comes first. */
  private static <T> FutureTask<T> task(Supplier<T> work) {
    return new FutureTask<>(work::get);
  }

  /** A fault on another core is the same fault here. */
  private static <T> T result(FutureTask<T> task) {
    try {
      return task.get();
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
      throw new IllegalStateException("interrupted while waiting for another core", e);
    }
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "beside");
    thread.setDaemon(true);
    return thread;
  }
}
