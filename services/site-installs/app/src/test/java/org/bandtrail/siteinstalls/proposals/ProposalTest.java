package org.bandtrail.siteinstalls.proposals;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.policies.PolicySamples;
import org.junit.jupiter.api.Test;

class ProposalTest {
    private static Proposal of(long girthMm) {
        return Proposal.of(Length.ofMm(girthMm), PolicySamples.VERSION_1, TapeMeasure.METRIC);
    }

    // By hand: 1234+50+38=1322 -> 1325; 1234+229=1463 -> 1465; (1465-1234)/(2 pi)=36.8; ceil(1234/150)=9.
    @Test
    void a_trunk_of_1234_mm_takes_what_a_pencil_says() {
        Proposal proposal = of(1234);
        assertThat(proposal.tape()).isEqualTo(Length.ofMm(1325));
        assertThat(proposal.mesh()).isEqualTo(Length.ofMm(1465));
        assertThat(proposal.standOff()).isEqualTo(Length.ofMm(37));
        assertThat(proposal.fasteners()).isEqualTo(Pieces.of(9));
        assertThat(proposal.height()).isEqualTo(Length.ofMm(1200));
        assertThat(proposal.policyVersion()).isEqualTo(1);
        assertThat(proposal.formula())
                .contains("girth 1234 + overlap 50 + 2 x tab 19 = 1322, rounded up to 1325 mm")
                .contains("(1465 - 1234) / (2 pi) = 37 mm");
    }

    @Test
    void a_trunk_just_below_the_smallest_is_cautioned() {
        assertThat(of(478).cautions()).anyMatch(text -> text.contains("below the smallest"));
        assertThat(of(479).cautions()).noneMatch(text -> text.contains("below the smallest"));
    }

    @Test
    void a_girth_nobody_believes_is_cautioned_first() {
        Proposal proposal = Proposal.of(WrittenGirth.ofGirth("78 ft"), PolicySamples.VERSION_1, TapeMeasure.METRIC);
        assertThat(proposal.cautions().getFirst()).contains("Perhaps it is 78 in");
        assertThat(Proposal.of(WrittenGirth.ofGirth("78 in"), PolicySamples.VERSION_1, TapeMeasure.METRIC)
                        .cautions())
                .noneMatch(text -> text.contains("Perhaps"));
    }

    @Test
    void every_proposal_says_what_to_do_with_a_stuck_animal() {
        assertThat(of(900).cautions()).anyMatch(text -> text.contains("licensed wildlife rehabilitator"));
    }
}
