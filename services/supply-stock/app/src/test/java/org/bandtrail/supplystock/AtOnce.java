package org.bandtrail.supplystock;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Does several things at the same moment: all threads are at the line before the first may go. */
public final class AtOnce {
    private AtOnce() {}

    /**
     * What each answers, in their order.
     *
     * @throws AssertionError with the first failure
     */
    public static <T> List<T> all(List<Callable<T>> tasks) {
        CountDownLatch ready = new CountDownLatch(tasks.size());
        CountDownLatch go = new CountDownLatch(1);
        List<Future<T>> running = new ArrayList<>();
        List<T> answers = new ArrayList<>();
        try (var threads = Executors.newVirtualThreadPerTaskExecutor()) {
            for (Callable<T> task : tasks) {
                running.add(threads.submit(() -> {
                    ready.countDown();
                    go.await();
                    return task.call();
                }));
            }
            ready.await();
            go.countDown();
            for (Future<T> each : running) {
                answers.add(each.get());
            }
        } catch (ExecutionException failed) {
            throw new AssertionError("One of them failed", failed.getCause());
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new AssertionError("Interrupted", interrupted);
        }
        return answers;
    }
}
