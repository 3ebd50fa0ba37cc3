package org.bandtrail.supplystock.items;

import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Pieces;
import org.jspecify.annotations.Nullable;

/**
 * The rules of an item.
 *
 * @param description what it is, null until registered
 */
public record Item(@Nullable ItemDescription description) {
    /** An item nobody has registered. */
    public static final Item UNKNOWN = new Item(null);

    private static final int LONGEST_LEAD_TIME_DAYS = 730;

    /**
     * What a command makes happen.
     *
     * @throws ItemRefused if the wish cannot be granted
     */
    public List<ItemEvent> decide(ItemCommand command) {
        return switch (command) {
            case ItemCommand.Register register -> register(register);
            case ItemCommand.Correct correct -> correct(correct);
            case ItemCommand.SetSupply set -> setSupply(set);
        };
    }

    private List<ItemEvent> register(ItemCommand.Register register) {
        if (description != null) {
            throw new ItemRefused.ItemCodeTaken(register.material(), description.name());
        }
        checkMeasures(register.material(), register.description());
        return List.of(new ItemEvent.Registered(
                register.material(), register.description(), Supply.USUAL, register.by(), register.occurred()));
    }

    private List<ItemEvent> correct(ItemCommand.Correct correct) {
        if (description == null) {
            throw new ItemRefused.ItemUnknown(correct.material());
        }
        if (correct.description().kind() != description.kind()) {
            throw new ItemRefused.KindIsFixed(
                    correct.material(),
                    description.kind(),
                    correct.description().kind());
        }
        checkMeasures(correct.material(), correct.description());
        if (correct.reason().isBlank()) {
            throw new ItemRefused.MeasuresDoNotFit(
                    correct.material(), "a correction needs a reason. Say what was wrong.");
        }
        if (correct.description().equals(description)) {
            return List.of();
        }
        return List.of(new ItemEvent.Corrected(
                correct.material(), correct.description(), correct.reason().strip(), correct.by(), correct.occurred()));
    }

    private static void checkMeasures(MaterialCode material, ItemDescription item) {
        if (item.name().isBlank()) {
            throw new ItemRefused.MeasuresDoNotFit(material, "the name is empty. Write the name people use.");
        }
        if (item.kind() == MaterialKind.FASTENER) {
            Pieces pack = item.packSize();
            if (pack == null || !pack.isPositive()) {
                throw new ItemRefused.MeasuresDoNotFit(
                        material, "fasteners need a pack size of 1 or more, not [%s].".formatted(pack));
            }
            return;
        }
        need(material, "a width", item.width());
        need(material, "the usual length of a reel", item.reelLength());
        if (item.kind() == MaterialKind.MESH) {
            need(material, "the mesh opening, because it decides which animals get through", item.opening());
        }
    }

    private static void need(MaterialCode material, String what, @Nullable Length length) {
        if (length == null || !length.isPositive()) {
            throw new ItemRefused.MeasuresDoNotFit(material, "it needs %s, not [%s].".formatted(what, length));
        }
    }

    private List<ItemEvent> setSupply(ItemCommand.SetSupply set) {
        if (description == null) {
            throw new ItemRefused.ItemUnknown(set.material());
        }
        Supply supply = set.supply();
        inRange(set.material(), "lead time in days", supply.leadTimeDays(), 0, LONGEST_LEAD_TIME_DAYS);
        inRange(set.material(), "spread of the lead time in days", supply.leadTimeSdDays(), 0, LONGEST_LEAD_TIME_DAYS);
        inRange(set.material(), "service level per mille", supply.serviceLevelPermille(), 500, 999);
        if (set.reason().isBlank()) {
            throw new ItemRefused.SupplyOutOfRange(set.material(), "a change of supply figures needs a reason.");
        }
        return List.of(new ItemEvent.SupplySet(set.material(), supply, set.reason(), set.by(), set.occurred()));
    }

    private static void inRange(MaterialCode material, String what, int value, int from, int to) {
        if (value < from || value > to) {
            throw new ItemRefused.SupplyOutOfRange(
                    material, "the %s is [%d] and must be from %d to %d.".formatted(what, value, from, to));
        }
    }

    /** The item after an event. */
    public Item evolve(ItemEvent event) {
        return switch (event) {
            case ItemEvent.Registered registered -> new Item(registered.description());
            case ItemEvent.Corrected corrected -> new Item(corrected.description());
            case ItemEvent.SupplySet unused -> this;
        };
    }
}
