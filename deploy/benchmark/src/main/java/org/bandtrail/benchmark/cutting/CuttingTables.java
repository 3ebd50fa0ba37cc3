package org.bandtrail.benchmark.cutting;

import java.io.PrintStream;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The outcomes by class and by size. */
final class CuttingTables {
    private final List<Outcome> outcomes;

    CuttingTables(List<Outcome> outcomes) {
        this.outcomes = List.copyOf(outcomes);
    }

    void print(PrintStream out) {
        out.println();
        out.println("| jobs | how many | median ms | slowest ms | scrap proven least | new reels proven fewest, too"
                + " | scrap / first fit's | worse than first fit | late"
                + " | general solver: proven / better / worse / none |");
        out.println("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        rows(out, outcome -> outcome.test().cls().name().toLowerCase().replace('_', ' '));
        rows(
                out,
                outcome -> "%04d pieces, %03d part reels"
                        .formatted(outcome.test().pieces(), outcome.test().parts()));
        rows(out, outcome -> "all");
    }

    private void rows(PrintStream out, Function<Outcome, String> name) {
        Map<String, List<Outcome>> groups =
                outcomes.stream().collect(Collectors.groupingBy(name, TreeMap::new, Collectors.toList()));
        groups.forEach((group, members) -> out.println(row(group, members)));
    }

    private static String row(String group, List<Outcome> members) {
        long[] millis = members.stream().mapToLong(Outcome::millis).sorted().toArray();
        long scrap = members.stream().mapToLong(one -> one.plan().scrapMm()).sum();
        long byHand =
                members.stream().mapToLong(one -> one.firstFit().scrapMm()).sum();
        return "| %s | %d | %,d | %,d | %d | %d | %.3f | %d | %d | %s |"
                .formatted(
                        group,
                        millis.length,
                        millis[millis.length / 2],
                        millis[millis.length - 1],
                        members.stream().filter(one -> one.plan().proven()).count(),
                        members.stream()
                                .filter(one -> one.plan().fewestNewReels())
                                .count(),
                        byHand == 0 ? 0 : (double) scrap / byHand,
                        members.stream().filter(Outcome::worseThanFirstFit).count(),
                        members.stream().filter(Outcome::late).count(),
                        general(members));
    }

    /** How often the general solver proved its plan, had less scrap than ours, had more, and had no plan at all. */
    private static String general(List<Outcome> members) {
        if (members.stream()
                .allMatch(one -> one.general().value() == null && !one.general().asked())) {
            return "not asked";
        }
        return "%d / %d / %d / %d"
                .formatted(
                        members.stream().filter(one -> one.general().proven()).count(),
                        members.stream()
                                .filter(one -> one.general().compared(one.plan().scrapMm()) < 0)
                                .count(),
                        members.stream()
                                .filter(one -> one.general().compared(one.plan().scrapMm()) > 0)
                                .count(),
                        members.stream()
                                .filter(one -> one.general().value() == null)
                                .count());
    }
}
