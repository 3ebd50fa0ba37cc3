package org.bandtrail.siteinstalls.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Objects;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.siteinstalls.OnPostgres;
import org.bandtrail.siteinstalls.bands.BandCommand.FitBand;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

@OnPostgres
class FitDetailsColumnsTest {
    private static final FitDetails TRAP = new FitDetails(
            "funnel-trap",
            2,
            "a branch is in the way",
            List.of("7d1c", "9e02"),
            Length.ofMm(40),
            true,
            "RIVERSIDE",
            "LYCMDE",
            List.of(new Piece(new ReelId("R-0101"), Length.ofMm(450)), new Piece(new ReelId("R-9"), Length.ofMm(7))),
            List.of(new Fasteners(new BatchId("F-0007"), Pieces.of(1))));
    private final BandTable table;

    @Autowired
    FitDetailsColumnsTest(JdbcClient jdbc) {
        this.table = new BandTable(jdbc);
    }

    private FitDetails kept(String band, FitDetails told) {
        Fitting fitting = BandSamples.FITTING.with(told);
        FitBand fit = new FitBand(
                new BandId(band),
                fitting,
                BandSamples.BOOKS,
                BandSamples.PERSON,
                org.bandtrail.kernel.Occurred.at(BandSamples.NOON));
        BandRow row = BandRow.NONE;
        for (BandEvent event : Band.NONE.decide(fit)) {
            row = row.after(event);
        }
        table.write(List.of(row));
        BandRow read =
                Objects.requireNonNull(table.read(List.of(new BandId(band))).get(new BandId(band)));
        return Objects.requireNonNull(read.fit()).details();
    }

    @Test
    void all_a_crew_told_of_a_device_comes_back_from_its_row() {
        assertThat(kept("DC-1", TRAP)).isEqualTo(TRAP);
    }

    @Test
    void what_nobody_said_stays_unsaid() {
        assertThat(kept("DC-2", FitDetails.USUAL)).isEqualTo(FitDetails.USUAL);
    }

    @Test
    void a_position_that_is_not_on_a_trunk_is_named() {
        assertThatThrownBy(() -> new FitDetails(
                        "sticky-band", 12, null, List.of(), null, null, null, null, List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[12]");
    }
}
