package org.bandtrail.supplystock.budgets;

import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a budget.
 *
 * @param plan what it is for, null until set
 * @param dropped whether it counts no longer
 */
public record Budget(@Nullable BudgetPlan plan, boolean dropped) {
    /** A budget nobody has set. */
    public static final Budget UNKNOWN = new Budget(null, false);

    /**
     * What a command makes happen.
     *
     * @throws BudgetRefused if the wish cannot be granted
     */
    public List<BudgetEvent> decide(BudgetCommand command) {
        return switch (command) {
            case BudgetCommand.SetUp set -> set(set);
            case BudgetCommand.ChangeAmount change -> change(change);
            case BudgetCommand.Drop drop -> {
                counting(drop.budgetId());
                yield List.of(new BudgetEvent.Dropped(
                        drop.budgetId(), reason(drop.budgetId(), drop.reason()), drop.by(), drop.occurred()));
            }
        };
    }

    private List<BudgetEvent> set(BudgetCommand.SetUp set) {
        if (plan != null) {
            throw new BudgetRefused.BudgetKnown(set.budgetId(), plan.name());
        }
        if (set.plan().name().isBlank()) {
            throw new BudgetRefused.BudgetUnfit(
                    set.budgetId(), "name", set.plan().name(), "Write what people call it.");
        }
        if (set.plan().through().isBefore(set.plan().from())) {
            throw new BudgetRefused.BudgetUnfit(
                    set.budgetId(),
                    "last month",
                    set.plan().through(),
                    "Give one not before %s.".formatted(set.plan().from()));
        }
        aboveZero(set.budgetId(), set.plan().amount());
        return List.of(new BudgetEvent.Planned(set.budgetId(), set.plan(), set.by(), set.occurred()));
    }

    private List<BudgetEvent> change(BudgetCommand.ChangeAmount change) {
        BudgetPlan counts = counting(change.budgetId());
        aboveZero(change.budgetId(), change.amount());
        if (!change.amount().currency().equals(counts.amount().currency())) {
            throw new BudgetRefused.BudgetUnfit(
                    change.budgetId(),
                    "currency",
                    change.amount().currency(),
                    "It is in %s.".formatted(counts.amount().currency()));
        }
        return List.of(new BudgetEvent.AmountChanged(
                change.budgetId(),
                change.amount(),
                reason(change.budgetId(), change.reason()),
                change.by(),
                change.occurred()));
    }

    private BudgetPlan counting(BudgetId budget) {
        if (plan == null || dropped) {
            throw new BudgetRefused.BudgetNotThere(budget, dropped);
        }
        return plan;
    }

    private static void aboveZero(BudgetId budget, Money amount) {
        if (amount.minor() <= 0) {
            throw new BudgetRefused.BudgetUnfit(budget, "amount", amount, "Give what may be spent, above zero.");
        }
    }

    private static String reason(BudgetId budget, String reason) {
        if (reason.isBlank()) {
            throw new BudgetRefused.BudgetUnfit(budget, "reason", reason, "Write in a few words why.");
        }
        return reason.strip();
    }

    /** The budget after an event. */
    public Budget evolve(BudgetEvent event) {
        return switch (event) {
            case BudgetEvent.Planned planned -> new Budget(planned.plan(), false);
            case BudgetEvent.AmountChanged changed ->
                new Budget(plan == null ? null : plan.of(changed.amount()), dropped);
            case BudgetEvent.Dropped gone -> new Budget(plan, true);
        };
    }
}
