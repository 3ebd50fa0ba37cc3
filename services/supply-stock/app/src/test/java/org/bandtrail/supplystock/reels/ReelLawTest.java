package org.bandtrail.supplystock.reels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.supplystock.reels.ReelSamples.*;

import java.util.List;
import java.util.random.RandomGenerator;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LoadId;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.costs.PieceCost;
import org.bandtrail.supplystock.holdings.CostBasis;
import org.bandtrail.supplystock.holdings.Holding;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.bandtrail.supplystock.holdings.StockRefused;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;

/** The material law over random histories: wishes and facts in any order, late, doubled and contradicting the books. */
class ReelLawTest {
    private static final int HISTORIES = 100_000;
    private static final List<PersonId> PEOPLE = List.of(ANNA, BORIS);
    private static final Class<?>[] FACTS = {
        ReelCommand.RecordFact.class, ReelCommand.Return.class, ReelCommand.Arrive.class
    };
    private static final List<SiteId> SITES = List.of(new SiteId("S-01"), new SiteId("S-02"), new SiteId("S-03"));

    @Test
    void length_and_money_are_conserved_whatever_happens() {
        long commands = Histories.check(
                HISTORIES,
                20_260_504,
                24,
                () -> Reel.UNKNOWN,
                ReelLawTest::anyCommand,
                ReelLawTest::step,
                ReelLawTest::law);

        assertThat(commands).isGreaterThan(HISTORIES);
    }

    private static Reel step(Reel reel, ReelCommand command) {
        try {
            return next(reel, command);
        } catch (ReelRefused | StockRefused refused) {
            assertThat(command).isNotInstanceOfAny(FACTS);
            return reel;
        }
    }

    private static void law(Reel reel) {
        Holding holding = reel.holding();
        assertThat(holding.whereabouts().sum(kind -> true))
                .as("all places together")
                .isZero();
        long used = holding.whereabouts().used();
        assertThat(used).as("kept beside the balances = added up").isEqualTo(leftStock(holding));
        assertThat(holding.usedBy().values().stream().mapToLong(Long::longValue).sum())
                .as("what the accounts used = what left stock")
                .isEqualTo(used);
        if (holding.basis().equals(CostBasis.START) && holding.bought() > 0) {
            long due =
                    new PieceCost(holding.costMinor(), holding.bought()).ofFirst(Math.clamp(used, 0, holding.bought()));
            assertThat(holding.charged()).as("charged = cost of what was used").isEqualTo(due);
        }
        if (used >= holding.bought()) {
            assertThat(holding.costInStock()).as("cost of nothing left").isZero();
        }
        assertThat(holding.costInStock()).as("cost in stock").isBetween(0L, holding.costMinor());
    }

    private static long leftStock(Holding holding) {
        long slit = holding.whereabouts().balances().entrySet().stream()
                .filter(each -> each.getKey().kind() == PlaceKind.SLIT)
                .mapToLong(each -> Math.max(0, each.getValue()))
                .sum();
        return slit + holding.whereabouts().sum(kind -> !kind.inStock() && !kind.isOrigin());
    }

    private static ReelCommand anyCommand(RandomGenerator random, Reel reel) {
        PersonId person = PEOPLE.get(random.nextInt(PEOPLE.size()));
        Place crew = Place.crew(person);
        Place tree = Place.tree(new TreeId("T-" + random.nextInt(3)));
        Place bag = Place.bag(new BagId("BAG-" + random.nextInt(2)));
        Length length = Length.ofMm(1 + random.nextInt(4_000));
        return switch (random.nextInt(17)) {
            case 0 -> receive(REEL, 1 + random.nextInt(30_000) + " mm", random.nextInt(5_000));
            case 1, 2 -> handOut(person);
            case 3, 4 -> told(crew, tree, length, random);
            case 5 -> told(tree, bag, length, random);
            case 6 -> random.nextBoolean() ? told(tree, crew, length, random) : told(crew, bag, length, random);
            case 7 -> told(bag, Place.disposed(new LoadId("LOAD-1")), length, random);
            case 8 -> new ReelCommand.Return(REEL, person, DEPOT, Length.ofMm(random.nextInt(30_000)), KEEPER, NOW);
            case 9, 10 -> ReelShelfSamples.any(random, person, length);
            case 11 -> ReelShelfSamples.revaluation(random);
            case 12, 13 -> ReelShelfSamples.correction(random, person, tree, length);
            default ->
                settle(reel.holding().whereabouts().balances().keySet().stream()
                        .skip(random.nextInt(
                                1 + reel.holding().whereabouts().balances().size()))
                        .findFirst()
                        .orElse(Place.missing(person)));
        };
    }

    private static ReelCommand told(Place from, Place to, Length length, RandomGenerator random) {
        SiteId site = random.nextInt(8) == 0 ? null : SITES.get(random.nextInt(SITES.size()));
        return new ReelCommand.RecordFact(REEL, "fact", from, to, length, site, ANNA, NOW);
    }
}
