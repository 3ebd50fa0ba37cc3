package org.bandtrail.supplystock.custody;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.supplystock.custody.Told.ANNA;

import java.util.List;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.holdings.Place;
import org.junit.jupiter.api.Test;

/** Many kits and two people with one reel, facts in any order: the settlements hold what the reel's books hold. */
class SettlementSimulation {
    private static final int HISTORIES = 20_000;
    private static final List<PersonId> PEOPLE = List.of(ANNA, new PersonId("P-08"));

    @Test
    void every_millimetre_handed_out_is_accounted_for_whatever_happens() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(20_260_504);
        int settled = 0;
        for (int run = 0; run < HISTORIES; run++) {
            Told told = new Told(1 + random.nextInt(50_000));
            for (int step = 0; step < 14; step++) {
                any(told, random, step);
            }
            settled += check(told);
        }
        assertThat(settled).as("histories in which something was settled").isGreaterThan(HISTORIES / 4);
    }

    private static void any(Told told, RandomGenerator random, int step) {
        PersonId person = PEOPLE.get(random.nextInt(PEOPLE.size()));
        long mm = 1 + random.nextInt(9_000);
        int hour = random.nextInt(4) == 0 ? random.nextInt(step + 1) : step;
        switch (random.nextInt(8)) {
            case 0, 1 -> told.handOut("K-" + step, person, hour);
            case 2, 3 -> told.fit(person, mm, hour);
            case 4 -> told.scrap(person, mm, hour);
            case 5 -> told.bringBack(person, random.nextInt(50_000), hour);
            case 6 -> told.fact(Place.tree(new TreeId("T-1")), Place.crew(person), mm, hour);
            default -> told.settle(person);
        }
    }

    /** Returns 1 if some kit was settled. */
    private static int check(Told told) {
        Settling settling = told.settling();
        TreeSet<String> kits = new TreeSet<>();
        told.steps().stream().filter(step -> step.kitId() != null).forEach(step -> kits.add(step.kitId()));
        long handedOut = 0;
        int settled = 0;
        for (String kit : kits) {
            Settlement all = settling.lines(kit).values().stream().reduce(Settlement.NOTHING, Settlement::plus);
            assertThat(all.gap()).as("handed out = what became of it").isZero();
            handedOut += all.handedOut();
            List<Settling.Chapter> story = settling.story(kit);
            if (!story.isEmpty() && story.getLast().settled()) {
                assertThat(all.stillOut()).as("settled means nothing is out").isZero();
                settled = 1;
            }
        }
        assertThat(handedOut)
                .as("what went out of the depot")
                .isEqualTo(told.steps().stream()
                        .filter(step -> step.kitId() != null)
                        .mapToLong(CustodyStep::quantity)
                        .sum());
        PEOPLE.forEach(person -> checkPerson(told, settling, kits, person));
        return settled;
    }

    private static void checkPerson(Told told, Settling settling, TreeSet<String> kits, PersonId person) {
        boolean hadKit = told.steps().stream()
                .anyMatch(step -> step.kitId() != null && step.held().person().equals(person.value()));
        if (!hadKit) {
            return;
        }
        long inKits = 0;
        for (String kit : kits) {
            for (var line : settling.lines(kit).entrySet()) {
                if (line.getKey().person().equals(person.value())) {
                    inKits += line.getValue().stillOut() + line.getValue().missing();
                }
            }
        }
        assertThat(inKits)
                .as("with the person and missing")
                .isEqualTo(told.reel().holding().at(Place.crew(person))
                        + told.reel().holding().at(Place.missing(person)));
    }
}
