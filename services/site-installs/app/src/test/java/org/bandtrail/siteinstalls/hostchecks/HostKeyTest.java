package org.bandtrail.siteinstalls.hostchecks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.bandtrail.siteinstalls.hostchecks.HostVerdict.Outcome;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;

/** The key for spotted lanternfly; its questions weigh 2, 2, 3, 3 and 2, together 12. */
class HostKeyTest {
    private static final EppoCode AILAL = new EppoCode("AILAL");
    private static final EppoCode RHUTY = new EppoCode("RHUTY");
    private final HostKey key;

    HostKeyTest() throws IOException {
        key = HostCheckWiring.read().of(new EppoCode("LYCMDE")).orElseThrow();
    }

    private static List<HostAnswer> answers(String... pairs) {
        return Arrays.stream(pairs)
                .map(pair -> pair.split("="))
                .map(pair -> new HostAnswer(pair[0], pair[1]))
                .toList();
    }

    @Test
    void every_sign_of_the_host_gives_a_host_and_no_key_is_surer_than_its_most() {
        // 12 of 12, second best below 0: 100 %, at most 95
        HostVerdict verdict =
                key.verdict(answers("leaf=many", "twig=alternate", "edge=smooth", "fruit=wings", "smell=rank"));
        assertThat(verdict).isEqualTo(new HostVerdict(Outcome.HOST, AILAL, 95));
    }

    @Test
    void not_sure_of_the_fruit_costs_its_weight_and_is_still_enough() {
        // (2 + 2 + 3 + 2) / 12 = 75 %; sumac: 2 + 2 - 3 - 2 < 0
        HostVerdict verdict =
                key.verdict(answers("leaf=many", "twig=alternate", "edge=smooth", "fruit=not-sure", "smell=rank"));
        assertThat(verdict).isEqualTo(new HostVerdict(Outcome.HOST, AILAL, 75));
    }

    @Test
    void a_sumac_is_told_from_its_teeth_and_its_cone() {
        // sumac 2 + 2 + 3 + 3 + 2 = 12; walnut 2 + 2 - 3 = 1: (12 - 1) / 12 = 91.7 %
        HostVerdict verdict =
                key.verdict(answers("leaf=many", "twig=alternate", "edge=toothed", "fruit=cone", "smell=none"));
        assertThat(verdict).isEqualTo(new HostVerdict(Outcome.NOT_HOST, RHUTY, 91));
    }

    @Test
    void signs_that_all_kinds_share_tell_nothing() {
        assertThat(key.verdict(answers("leaf=many", "twig=alternate")))
                .isEqualTo(new HostVerdict(Outcome.UNSURE, null, 0));
        // 7 less 1 of the next best, of 12, is 50 %, and 5 of 12 is 41 %: neither is enough
        assertThat(key.verdict(answers("leaf=many", "twig=alternate", "edge=smooth")))
                .isEqualTo(new HostVerdict(Outcome.UNSURE, AILAL, 50));
        assertThat(key.verdict(answers("leaf=many", "twig=not-sure", "edge=smooth")))
                .isEqualTo(new HostVerdict(Outcome.UNSURE, AILAL, 41));
    }

    @Test
    void opposite_leaves_end_the_key_at_once() {
        List<HostAnswer> ash = answers("leaf=many", "twig=opposite");
        assertThat(key.next(ash)).isEmpty();
        assertThat(key.verdict(ash)).isEqualTo(new HostVerdict(Outcome.NOT_HOST, null, 90));
    }

    @Test
    void what_is_no_answer_of_the_key_is_named() {
        assertThatThrownBy(() -> key.verdict(answers("leaf=blue"))).hasMessageContaining("[blue]");
        assertThatThrownBy(() -> key.next(answers("bark=grey"))).hasMessageContaining("[bark]");
        assertThatThrownBy(() -> key.verdict(answers("leaf=many", "leaf=single")))
                .hasMessageContaining("twice");
    }

    @Test
    void whatever_is_answered_the_key_ends_and_its_confidence_is_within_its_limits() {
        long verdicts = Histories.check(5_000, 1, 2, random -> random.nextInt(), seeds -> {
            List<HostAnswer> given = new ArrayList<>();
            int turn = seeds.getFirst();
            Optional<HostQuestion> question = key.next(given);
            while (question.isPresent()) {
                List<String> possible = new ArrayList<>(List.of(HostQuestion.NOT_SURE));
                question.get().answers().forEach(choice -> possible.add(choice.id()));
                turn = turn * 31 + 7;
                String answer = possible.get(Math.floorMod(turn, possible.size()));
                given.add(new HostAnswer(question.get().id(), answer));
                question = key.next(given);
            }
            HostVerdict verdict = key.verdict(given);
            assertThat(given.size()).isLessThanOrEqualTo(key.questions().size());
            assertThat(verdict.confidencePercent()).isBetween(0, key.mostPercent());
            if (verdict.outcome() != Outcome.UNSURE) {
                assertThat(verdict.confidencePercent()).isGreaterThanOrEqualTo(key.enoughPercent());
            }
        });
        assertThat(verdicts).isPositive();
    }

    @Test
    void the_key_names_only_kinds_it_tells_apart() {
        assertThat(key.candidates()).containsAll(key.hosts());
        assertThat(key.questions()).allSatisfy(question -> {
            assertThat(question.weight()).isBetween(1, 5);
            assertThat(question.answers()).hasSizeGreaterThan(1).allSatisfy(choice -> {
                assertThat(key.candidates()).containsAll(choice.fits()).containsAll(choice.against());
                assertThat(choice.fits()).noneMatch(choice.against()::contains);
            });
        });
    }
}
