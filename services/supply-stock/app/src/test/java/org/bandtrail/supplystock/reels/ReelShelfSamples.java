package org.bandtrail.supplystock.reels;

import static org.bandtrail.supplystock.reels.ReelSamples.*;

import java.util.List;
import java.util.random.RandomGenerator;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.jspecify.annotations.Nullable;

/** Words for tests about a reel while no crew has it: bins, set aside, vehicle, transfer, slitting, changed cost. */
final class ReelShelfSamples {
    static final Place LOOSE = Place.depot(DEPOT);
    static final Place BIN = Place.bin(DEPOT, "A-03");
    static final Place ASIDE = Place.setAside(DEPOT);
    static final Place TRUCK = Place.vehicle("V-1");
    static final Place ON_THE_WAY = Place.inTransit("TR-1");
    private static final List<Place> STOCK = List.of(LOOSE, BIN, ASIDE, TRUCK, ON_THE_WAY, Place.SUPPLIER);

    private ReelShelfSamples() {}

    static ReelCommand.Relocate move(StockMove what, Place source, Place target, @Nullable String length) {
        Length much = length == null ? null : Length.parse(length);
        return new ReelCommand.Relocate(REEL, what, source, target, much, "TR-1", null, KEEPER, NOW);
    }

    static ReelCommand.Arrive arrive(String measured) {
        return new ReelCommand.Arrive(REEL, ON_THE_WAY, BIN, Length.parse(measured), BORIS, "TR-1", KEEPER, NOW);
    }

    static ReelCommand.Adjust adjust(Place place, long mm) {
        return new ReelCommand.Adjust(REEL, place, mm, "count C-1", "torn end", KEEPER, NOW);
    }

    static ReelCommand.ChangeCost changeCost(CostChange why, long minor) {
        return new ReelCommand.ChangeCost(REEL, why, Money.of(minor, "USD"), "INV-1", KEEPER, NOW);
    }

    static ReelCommand.WriteDown writeDown(long minor) {
        return new ReelCommand.WriteDown(REEL, Money.of(minor, "USD"), "glue dried out", KEEPER, NOW);
    }

    static ReelCommand.Slit slit(String length) {
        return new ReelCommand.Slit(REEL, "S-1", LOOSE, Length.parse(length), KEEPER, NOW);
    }

    static ReelCommand.MakeBySlitting make(String length, long minor) {
        return new ReelCommand.MakeBySlitting(
                REEL, TAPE, MaterialKind.TAPE, Length.parse(length), Money.of(minor, "USD"), "S-1", LOOSE, KEEPER, NOW);
    }

    /** A correction of what was told wrong, possible or not. */
    static ReelCommand correction(RandomGenerator random, PersonId person, Place field, Length length) {
        Place missing = random.nextBoolean() ? Place.missing(person) : Place.crew(person);
        Place other = random.nextInt(3) == 0 ? LOOSE : field;
        boolean out = random.nextBoolean();
        ReelId meant = random.nextBoolean() ? new ReelId("R-0002") : null;
        return new ReelCommand.PutRight(
                REEL, out ? missing : other, out ? other : missing, length, meant, SITE, "read again", KEEPER, NOW);
    }

    /** Any move of stock, possible or not. */
    static ReelCommand any(RandomGenerator random, PersonId carrier, Length length) {
        Place source = STOCK.get(random.nextInt(STOCK.size()));
        Place target = STOCK.get(random.nextInt(STOCK.size()));
        StockMove what = StockMove.values()[random.nextInt(StockMove.values().length)];
        return switch (random.nextInt(8)) {
            case 0 -> new ReelCommand.Arrive(REEL, ON_THE_WAY, LOOSE, length, carrier, "TR-1", KEEPER, NOW);
            case 1 -> adjust(source == Place.SUPPLIER ? BIN : source, random.nextInt(2_000) - 1_000);
            case 2 -> new ReelCommand.Slit(REEL, "S-" + random.nextInt(3), LOOSE, length, KEEPER, NOW);
            case 3 -> make(1 + random.nextInt(20_000) + " mm", random.nextInt(5_000));
            default ->
                new ReelCommand.Relocate(
                        REEL, what, source, target, random.nextBoolean() ? null : length, null, null, KEEPER, NOW);
        };
    }

    /** Any change of cost, possible or not. */
    static ReelCommand revaluation(RandomGenerator random) {
        return random.nextInt(3) == 0
                ? writeDown(random.nextInt(2_000))
                : changeCost(CostChange.values()[random.nextInt(6)], random.nextInt(4_000) - 1_500);
    }
}
