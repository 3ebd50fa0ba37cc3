package org.bandtrail.local.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Handing out and taking back one crew's kits: what is written in the books, and what really changes hands. */
final class KitBook {
    private static final long PINS_A_WEEK = 240;

    private final Place.Crew crew;
    private final StockRoom depot;
    private final Dice dice;
    private final SeasonBook book;

    KitBook(Place.Crew crew, StockRoom depot, Dice dice, SeasonBook book) {
        this.crew = crew;
        this.depot = depot;
        this.dice = dice;
        this.book = book;
    }

    /** Hands out the week's kit on its first morning. */
    Kit open(String holder, LocalDate day) {
        Kit kit = new Kit(holder);
        if (day.equals(Mistakes.UNWRITTEN_REEL) && crew.crewId().equals(Mistakes.UNWRITTEN_REEL_CREW)) {
            takeUnwritten(kit);
        }
        List<Held> taken = new ArrayList<>(depot.take(Kit.TAPE, 20_000, 3_000));
        taken.addAll(depot.take(Kit.MESH, 8_000, 2_000));
        taken.addAll(depot.take(Kit.FINE_MESH, 5_000, 2_000));
        String batch = depot.takePins(PINS_A_WEEK);
        kit.pins.put(batch, PINS_A_WEEK);
        write(kit, taken, batch + "=" + PINS_A_WEEK, day + "T11:20:00Z");
        return kit;
    }

    /** Hands out another reel in the morning if one would run out during the day. */
    void topUp(Kit kit, LocalDate day) {
        List<Held> taken = new ArrayList<>();
        if (kit.longest(Kit.TAPE) < 9_000) {
            taken.addAll(depot.take(Kit.TAPE, 9_000, 9_000));
        }
        if (kit.longest(Kit.MESH) < 5_000) {
            taken.addAll(depot.take(Kit.MESH, 5_000, 5_000));
        }
        if (kit.longest(Kit.FINE_MESH) < 4_000) {
            taken.addAll(depot.take(Kit.FINE_MESH, 4_000, 4_000));
        }
        if (!taken.isEmpty()) {
            write(kit, taken, "", day + "T11:40:00Z");
        }
    }

    private void takeUnwritten(Kit kit) {
        Held extra = depot.takeUnwritten(3_000, 16_000);
        if (extra == null) {
            throw new IllegalStateException("No part reel for the unwritten handout; choose another day.");
        }
        kit.reels.put(extra.reelId, extra);
        kit.unwritten = extra.reelId;
    }

    private void write(Kit kit, List<Held> taken, String pins, String at) {
        String kitId = book.next("K", 3);
        kit.pack(kitId, taken);
        book.handouts.add(
                kitId,
                crew.depotId(),
                crew.crewId(),
                kit.holder,
                taken.stream().map(held -> held.reelId).collect(Collectors.joining(" ")),
                pins,
                depot.depot().keeper(),
                at);
    }

    /** Takes everything back at the end of the week: measured, with the small losses of real life and one large one. */
    void close(Kit kit, LocalDate day) {
        if (kit.unwritten != null) {
            kit.reels.remove(kit.unwritten);
        }
        boolean losesReel = day.equals(Mistakes.LOST_REEL) && crew.crewId().equals(Mistakes.LOST_REEL_CREW);
        List<String> left = new ArrayList<>(kit.reels.keySet());
        boolean first = true;
        for (var handout : kit.handouts.entrySet()) {
            List<String> lines = new ArrayList<>(handout.getValue());
            if (first) {
                left.removeAll(
                        kit.handouts.values().stream().flatMap(List::stream).toList());
                lines.addAll(left);
            }
            StringBuilder measured = new StringBuilder();
            for (String reel : lines) {
                Held held = kit.reels.get(reel);
                boolean lost = losesReel && held != null && held.material.equals(Kit.TAPE) && held.woundMm() > 8_000;
                losesReel &= !lost;
                measured.append(measured.isEmpty() ? "" : " ")
                        .append(reel)
                        .append('=')
                        .append(back(held, lost));
            }
            book.returns.add(
                    handout.getKey(),
                    kit.holder,
                    crew.depotId(),
                    measured,
                    first ? pinsBack(kit) : "",
                    depot.depot().keeper(),
                    day + "T20:15:00Z");
            first = false;
        }
        if (losesReel) {
            throw new IllegalStateException("No long tape reel to lose on " + day + "; choose another day.");
        }
    }

    private long back(@org.jspecify.annotations.Nullable Held held, boolean lost) {
        if (held == null || lost) {
            return 0;
        }
        if (held.woundMm() > 1_000 && dice.chance(35)) {
            held.lose(dice.between(1, 24) * 10L);
        }
        depot.putBack(held);
        return held.totalMm();
    }

    private String pinsBack(Kit kit) {
        return kit.pins.entrySet().stream()
                .map(batch -> {
                    long counted = Math.max(0, batch.getValue() - (dice.chance(150) ? dice.between(1, 4) : 0));
                    depot.putBackPins(batch.getKey(), counted);
                    return batch.getKey() + "=" + counted;
                })
                .collect(Collectors.joining(" "));
    }
}
