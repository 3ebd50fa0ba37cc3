package org.bandtrail.local;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * What was asked for on the command line.
 *
 * @param data the folder for everything that must survive a restart
 * @param demoData the folder with the demo season's files
 * @param season whether the demo season is loaded at the first start
 * @param stopAfterLoad whether to stop as soon as everything is up and loaded
 * @param ports the four ports
 */
public record LauncherOptions(Path data, Path demoData, boolean season, boolean stopAfterLoad, Ports ports) {

    /** The text printed for {@code --help} and after an argument that is not understood. */
    public static final String USAGE = """
            Usage: deploy/demo [options]
              --empty            start without the demo season
              --stop-after-load  stop as soon as everything is up and the season is loaded
              --data FOLDER      where the data is kept (default: .data in the project folder)
              --demo-data FOLDER the season's files (default: demo-data in the project folder)
              --ports A,B,C,D    front-desk, supply-stock, site-installs, inspections
                                 (default: 8100,8101,8102,8103; 0 takes any free port)
              --help             this text""";

    /**
     * Reads the command line.
     *
     * @param home the project folder, which the default folders are relative to
     * @param arguments the arguments as the shell split them
     * @return the options, defaults filled in
     * @throws CannotStart if an argument is not known or its value is missing or wrong
     */
    public static LauncherOptions parse(Path home, String... arguments) {
        LauncherOptions options =
                new LauncherOptions(home.resolve(".data"), home.resolve("demo-data"), true, false, Ports.DEFAULT);
        Deque<String> rest = new ArrayDeque<>(List.of(arguments));
        while (!rest.isEmpty()) {
            options = options.with(rest.pop(), rest);
        }
        return options;
    }

    private LauncherOptions with(String argument, Deque<String> rest) {
        return switch (argument) {
            case "--empty" -> new LauncherOptions(data, demoData, false, stopAfterLoad, ports);
            case "--stop-after-load" -> new LauncherOptions(data, demoData, season, true, ports);
            case "--data" -> new LauncherOptions(folder(argument, rest), demoData, season, stopAfterLoad, ports);
            case "--demo-data" -> new LauncherOptions(data, folder(argument, rest), season, stopAfterLoad, ports);
            case "--ports" ->
                new LauncherOptions(data, demoData, season, stopAfterLoad, Ports.parse(value(argument, rest)));
            default -> throw new CannotStart("The argument [" + argument + "] is not known.\n" + USAGE);
        };
    }

    private static Path folder(String argument, Deque<String> rest) {
        return Path.of(value(argument, rest)).toAbsolutePath().normalize();
    }

    private static String value(String argument, Deque<String> rest) {
        if (rest.isEmpty() || rest.peek().startsWith("--")) {
            List<String> seen = new ArrayList<>(rest);
            throw new CannotStart(argument + " needs a value, found " + seen + ".\n" + USAGE);
        }
        return rest.pop();
    }
}
