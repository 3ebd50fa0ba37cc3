package org.bandtrail.frontdesk.plans;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.frontdesk.neighbours.field.Plan;

/**
 * Days down, crews across.
 *
 * @param first the Monday it begins with
 * @param crews crews that have a plan in these days, by identity
 * @param days the days, without those on which nothing is planned at the weekend
 */
record Board(LocalDate first, List<String> crews, List<Day> days) {
    /** Two weeks are looked at, this one and the next. */
    static final int DAYS = 14;

    private static final int FRIDAY = 5;

    /** One day with a cell for each crew. */
    record Day(LocalDate date, List<Cell> cells) {
        /** Whether anybody works. */
        boolean busy() {
            return cells.stream().anyMatch(cell -> !cell.plans().isEmpty());
        }
    }

    /** What a crew does on a day. */
    record Cell(String crewId, List<Plan.Row> plans) {}

    static Board of(LocalDate first, List<Plan.Row> plans) {
        List<String> crews =
                plans.stream().map(Plan.Row::crewId).distinct().sorted().toList();
        List<Day> days = new ArrayList<>();
        for (LocalDate date = first; date.isBefore(first.plusDays(DAYS)); date = date.plusDays(1)) {
            Day day = day(date, crews, plans);
            if (day.busy() || date.getDayOfWeek().getValue() <= FRIDAY) {
                days.add(day);
            }
        }
        return new Board(first, crews, List.copyOf(days));
    }

    private static Day day(LocalDate date, List<String> crews, List<Plan.Row> plans) {
        return new Day(
                date,
                crews.stream()
                        .map(crew -> new Cell(
                                crew,
                                plans.stream()
                                        .filter(plan -> plan.crewId().equals(crew) && plan.on(date))
                                        .toList()))
                        .toList());
    }

    /** Trees of all plans that begin in these days, each plan once. */
    static long trees(List<Plan.Row> plans) {
        return plans.stream().mapToLong(Plan.Row::trees).sum();
    }
}
