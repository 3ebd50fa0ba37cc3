package org.bandtrail.supplystock.slittings;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.items.ItemRow;
import org.bandtrail.supplystock.items.Items;
import org.bandtrail.supplystock.reels.ReelBalance;
import org.bandtrail.supplystock.reels.ReelBalances;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.bandtrail.supplystock.relocations.Relocating;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Sends a slitting's commands to the wide reel and its strips, inside one work: all or nothing. */
@Component
class Slitter {
    private final Commands commands;
    private final Relocating relocating;
    private final Items items;
    private final ReelBalances reels;

    Slitter(Commands commands, Relocating relocating, Items items, ReelBalances reels) {
        this.commands = commands;
        this.relocating = relocating;
        this.items = items;
        this.reels = reels;
    }

    /**
     * Slits; call it inside a work.
     *
     * @return minor units each strip costs, in order
     */
    List<Money> slit(SlittingController.Slit wish, PersonId by, Occurred occurred) {
        ReelBalance.Whole wide = reels.whole(wish.reelId().value())
                .filter(reel -> reel.balance().materialCode() != null)
                .orElseThrow(() -> new SlittingRefused.ReelUnknown(wish.reelId()));
        ItemRow item = items.known(
                new MaterialCode(Objects.requireNonNull(wide.balance().materialCode())));
        List<Strip> strips = strips(wish, item);
        Place shelf = relocating.whereIs(wish.reelId(), wish.depotId());
        Length length = wish.length() == null ? Length.ofMm(at(wide, shelf)) : wish.length();
        commands.send(new SlittingCommand.Slit(
                wish.slittingId(),
                wish.reelId(),
                new MaterialCode(item.materialCode()),
                length,
                width(item),
                strips,
                wish.trim(),
                by,
                occurred));
        long cost = paidIn(commands.ask(
                new ReelCommand.Slit(wish.reelId(), wish.slittingId().value(), shelf, length, by, occurred)));
        String currency = Objects.requireNonNull(wide.balance().cost()).currency();
        List<Money> shares = Slitting.costs(cost, strips).stream()
                .map(minor -> Money.of(minor, currency))
                .toList();
        for (int i = 0; i < strips.size(); i++) {
            commands.send(new ReelCommand.MakeBySlitting(
                    strips.get(i).reelId(),
                    strips.get(i).material(),
                    item.kind(),
                    length,
                    shares.get(i),
                    wish.slittingId().value(),
                    Place.depot(wish.depotId()),
                    by,
                    occurred));
        }
        return shares;
    }

    private List<Strip> strips(SlittingController.Slit wish, ItemRow wide) {
        List<Strip> strips = new ArrayList<>();
        for (SlittingController.Wanted wanted : wish.strips()) {
            ItemRow narrow = items.known(wanted.materialCode());
            if (narrow.kind() != wide.kind() || narrow.kind() == MaterialKind.FASTENER) {
                throw new SlittingRefused.OtherKind(new MaterialCode(wide.materialCode()), wanted.materialCode());
            }
            strips.add(new Strip(wanted.reelId(), wanted.materialCode(), width(narrow)));
        }
        return strips;
    }

    private static Length width(ItemRow item) {
        Long width = item.widthMm();
        if (width == null) {
            throw new SlittingRefused.WidthUnknown(new MaterialCode(item.materialCode()));
        }
        return Length.ofMm(width);
    }

    private static long at(ReelBalance.Whole reel, Place place) {
        return reel.places().stream()
                .filter(each -> each.place().equals(place.toString()))
                .mapToLong(each -> each.quantity())
                .sum();
    }

    private static long paidIn(@Nullable Object answer) {
        return ((List<?>) Objects.requireNonNull(answer))
                .stream()
                        .flatMap(event -> ((ReelEvent) event).entry().charges().stream())
                        .mapToLong(Charge::minor)
                        .sum();
    }

    /** The labels of the strips that a slitting of this reel would get: the reel's own, then A, B, C and so on. */
    static List<ReelId> labels(ReelId wide, int strips) {
        List<ReelId> labels = new ArrayList<>();
        for (int i = 0; i < strips; i++) {
            labels.add(new ReelId(wide.value() + "-" + (i < 26 ? String.valueOf((char) ('A' + i)) : "Z" + i)));
        }
        return labels;
    }
}
