package org.bandtrail.supplystock.takebacks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LastMoveTest {
    private static final Instant MADE = Instant.parse("2026-05-04T08:00:00.123456Z");
    private static final DepotId DEPOT = new DepotId("RIVER");

    @ParameterizedTest
    @EnumSource(
            value = StockMove.class,
            names = {"PUT_IN_BIN", "SET_ASIDE", "RELEASED", "LOADED", "UNLOADED"})
    void a_move_by_hand_has_an_opposite_that_fits_the_places_the_other_way_round(StockMove made) {
        Place source = made == StockMove.RELEASED
                ? Place.setAside(DEPOT)
                : made == StockMove.UNLOADED ? Place.vehicle("V-1") : Place.bin(DEPOT, "A-03");
        Place target = made == StockMove.SET_ASIDE
                ? Place.setAside(DEPOT)
                : made == StockMove.LOADED ? Place.vehicle("V-1") : Place.depot(DEPOT);
        assertThat(made.fits(source, target)).isTrue();

        assertThat(last(made).opposite(MADE, MADE).fits(target, source)).isTrue();
    }

    @Test
    void ten_minutes_are_in_time_and_a_moment_more_is_not() {
        assertThat(last(StockMove.SET_ASIDE).opposite(MADE, MADE.plusSeconds(600)))
                .isEqualTo(StockMove.RELEASED);
        assertThatExceptionOfType(TakeBackRefused.TooLate.class)
                .isThrownBy(() -> last(StockMove.SET_ASIDE)
                        .opposite(MADE, MADE.plusSeconds(600).plusMillis(1)))
                .withMessageContaining("[10] minutes");
    }

    @Test
    void what_somebody_moved_since_stays_where_it_is() {
        assertThatExceptionOfType(TakeBackRefused.MovedSince.class)
                .isThrownBy(() -> last(StockMove.PUT_IN_BIN).opposite(MADE.minusSeconds(5), MADE.plusSeconds(5)))
                .withMessageContaining("[R-1] was moved again since")
                .withMessageContaining("depot:RIVER");
    }

    @Test
    void the_digits_a_history_does_not_keep_make_no_difference() {
        assertThat(last(StockMove.LOADED).opposite(MADE.plusNanos(900), MADE.plusSeconds(5)))
                .isEqualTo(StockMove.UNLOADED);
    }

    @ParameterizedTest
    @EnumSource(
            value = StockMove.class,
            names = {"SENT", "CALLED_OFF", "SENT_BACK"})
    void what_is_called_off_elsewhere_is_not_taken_back_here(StockMove made) {
        assertThatExceptionOfType(TakeBackRefused.NoWayBack.class)
                .isThrownBy(() -> last(made).opposite(MADE, MADE))
                .withMessageContaining(made.word());
    }

    private static LastMove last(StockMove made) {
        return new LastMove("R-1", made.word(), Place.depot(DEPOT), Place.bin(DEPOT, "A-03"), 50_000, MADE);
    }
}
