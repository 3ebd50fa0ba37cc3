package org.bandtrail.local;

import java.io.Console;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;

/**
 * The program behind {@code deploy/demo}: starts everything, loads the demo season the first time, says where to look,
 * and stops cleanly on Ctrl-C. Exit codes: 0 stopped as asked, 1 could not start, 2 the command line is wrong.
 */
public final class Launcher {

    private final LauncherOptions options;
    private final PrintStream out;

    private Launcher(LauncherOptions options, PrintStream out) {
        this.options = options;
        this.out = out;
    }

    /**
     * Starts Bandtrail and returns when it has been stopped.
     *
     * @param arguments see {@link LauncherOptions#USAGE}
     */
    public static void main(String[] arguments) {
        System.exit(run(System.out, arguments));
    }

    private static int run(PrintStream out, String... arguments) {
        if (List.of(arguments).contains("--help")) {
            out.println(LauncherOptions.USAGE);
            return 0;
        }
        LauncherOptions options;
        try {
            options = LauncherOptions.parse(home(), arguments);
        } catch (CannotStart notUnderstood) {
            out.println(notUnderstood.getMessage());
            return 2;
        }
        try {
            new Launcher(options, out).run();
            return 0;
        } catch (CannotStart reason) {
            out.println();
            out.println("Bandtrail cannot start. " + reason.getMessage());
            return 1;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return 0;
        }
    }

    private static Path home() {
        return Path.of(System.getProperty("bandtrail.home", ""))
                .toAbsolutePath()
                .normalize();
    }

    private void run() throws InterruptedException {
        Shutdown shutdown = new Shutdown();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> stop(shutdown), "stop"));
        House house = House.start(options, out::println, shutdown);
        FirstStart first = new FirstStart(house, options, out::println);
        first.run(new ConsoleProgress(out, isTerminal()));
        if (options.stopAfterLoad()) {
            out.println("Everything is up and loaded; stopping as asked.");
            return;
        }
        out.println(Welcome.text(house, first.people(), new Reception(house).password()));
        new CountDownLatch(1).await();
    }

    private static boolean isTerminal() {
        Console console = System.console();
        return console != null && console.isTerminal();
    }

    private void stop(Shutdown shutdown) {
        out.println();
        out.println("Stopping ...");
        shutdown.close();
        out.println("Stopped. The data stays in " + options.data());
    }
}
