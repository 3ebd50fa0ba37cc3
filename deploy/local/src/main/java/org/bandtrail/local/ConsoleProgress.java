package org.bandtrail.local;

import java.io.PrintStream;
import org.bandtrail.local.season.Progress;

/**
 * Shows progress as one line that is written over again on a terminal, and as one line per tenth of the way where the
 * output goes to a file.
 */
final class ConsoleProgress implements Progress {

    private static final int WIDTH = 30;
    private static final int HUNDRED = 100;
    private static final int TENTH = 10;

    private final PrintStream out;
    private final boolean terminal;
    private int lastPercent = -1;

    ConsoleProgress(PrintStream out, boolean terminal) {
        this.out = out;
        this.terminal = terminal;
    }

    @Override
    public void at(String what, int done, int total) {
        int percent = (int) ((long) done * HUNDRED / Math.max(1, total));
        if (percent == lastPercent) {
            return;
        }
        if (terminal) {
            String bar = "#".repeat(percent * WIDTH / HUNDRED);
            out.printf("\r  [%-" + WIDTH + "s] %3d %%  %-30.30s", bar, percent, what);
            out.print(percent == HUNDRED ? System.lineSeparator() : "");
            out.flush();
        } else if (percent / TENTH != lastPercent / TENTH || lastPercent < 0) {
            out.printf("  %3d %%  %s%n", percent, what);
        }
        lastPercent = percent;
    }
}
