package org.bandtrail.supplystock.countplans;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bandtrail.supplystock.countrules.CountRules;
import org.bandtrail.supplystock.countrules.CountRulesInForce;
import org.bandtrail.supplystock.counts.Counts;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Puts the plan together: classes by value, last counts, and what lies where. */
@Component
public class CountPlans {
    private final ItemValues values;
    private final CountRulesInForce rules;
    private final Counts counts;

    CountPlans(ItemValues values, CountRulesInForce rules, Counts counts) {
        this.values = values;
        this.rules = rules;
        this.counts = counts;
    }

    /** Every item with its value and class, the dearest first. */
    public List<ValueClasses.Classified> classes(LocalDate today) {
        CountRules now = rules.now();
        return ValueClasses.of(values.by(now.basis(), today), now.shareA(), now.shareB());
    }

    /**
     * One page of the plan, the most urgent first.
     *
     * @param depot only this depot with its bins, or null
     * @param dueOnly only what is due today or was before
     * @param after key after which the page begins, or null
     */
    public List<DueCount> page(
            LocalDate today, @Nullable String depot, boolean dueOnly, @Nullable String after, int limit) {
        CountRules now = rules.now();
        Map<String, ValueClass> classes = classes(today).stream()
                .collect(Collectors.toMap(
                        each -> each.item().material(), ValueClasses.Classified::valueClass, CountPlans::better));
        Map<Counts.LastCounted, Instant> last = counts.lastCounted();
        Function<ItemValues.Lying, DueCount> row = lying -> row(
                lying,
                classes.getOrDefault(lying.material(), ValueClass.C),
                last.get(new Counts.LastCounted(lying.place(), lying.material())),
                now,
                today);
        return values.lying().stream()
                .filter(lying -> depot == null || within(depot, lying.place()))
                .map(row)
                .filter(each -> each.due() || !dueOnly)
                .filter(each -> after == null || each.key().compareTo(after) > 0)
                .sorted(Comparator.comparing(DueCount::key))
                .limit(limit)
                .toList();
    }

    /** An item bought in two currencies has the better of its two classes. */
    private static ValueClass better(ValueClass one, ValueClass other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    private static boolean within(String depot, String place) {
        return place.equals("depot:" + depot) || place.startsWith("depot:" + depot + "/");
    }

    private static DueCount row(
            ItemValues.Lying lying,
            ValueClass valueClass,
            @Nullable Instant lastCounted,
            CountRules rules,
            LocalDate today) {
        int days = valueClass.days(rules);
        LocalDate dueOn = lastCounted == null
                ? null
                : lastCounted.atZone(ZoneOffset.UTC).toLocalDate().plusDays(days);
        return new DueCount(
                lying.place(),
                lying.material(),
                lying.kind(),
                lying.holdings(),
                valueClass,
                days,
                lastCounted,
                dueOn,
                dueOn == null || !dueOn.isAfter(today));
    }
}
