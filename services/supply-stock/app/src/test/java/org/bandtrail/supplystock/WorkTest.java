package org.bandtrail.supplystock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventstore.CommandReused;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.eventstore.Work;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The same request does its work once, alone or in a delivery of many. */
@OnPostgres
class WorkTest {
    private static final UUID ONE = UUID.fromString("01980000-0000-7000-8000-0000000000a1");
    private static final UUID TWO = UUID.fromString("01980000-0000-7000-8000-0000000000a2");
    private static final UUID THREE = UUID.fromString("01980000-0000-7000-8000-0000000000a3");
    private final List<String> done = new ArrayList<>();

    @Autowired
    Work work;

    record Asked(String what) {}

    record Answer(String words) {}

    /** A wish nobody grants. */
    static final class NotToday extends Refusal {
        private static final long serialVersionUID = 1L;

        NotToday() {
            super("Not today.");
        }
    }

    @Test
    void a_delivery_that_names_an_id_twice_does_its_work_once_and_comes_again_without_effect() {
        List<String> first = deliver();
        List<String> again = deliver();

        assertThat(first).containsExactly("a", "b", "a");
        assertThat(again).isEqualTo(first);
        assertThat(done).containsExactly("a", "b");
    }

    private List<String> deliver() {
        return work.inOneTransaction(() -> {
            work.claim(List.of(
                    new Work.Stamp(ONE, new Asked("a")),
                    new Work.Stamp(TWO, new Asked("b")),
                    new Work.Stamp(ONE, new Asked("a"))));
            return List.of(once(ONE, "a"), once(TWO, "b"), once(ONE, "a"));
        });
    }

    @Test
    void an_id_that_was_refused_inside_a_delivery_is_free_again() {
        work.inOneTransaction(() -> {
            work.claim(List.of(new Work.Stamp(THREE, new Asked("c"))));
            assertThatExceptionOfType(NotToday.class)
                    .isThrownBy(() -> work.once(THREE, new Asked("c"), Answer.class, () -> {
                        throw new NotToday();
                    }));
            return "the rest of the delivery is kept";
        });

        assertThat(once(THREE, "d")).isEqualTo("d");
        assertThatExceptionOfType(CommandReused.class).isThrownBy(() -> once(THREE, "c"));
    }

    @Test
    void ids_are_not_claimed_outside_of_work() {
        assertThatExceptionOfType(IllegalStateException.class)
                .isThrownBy(() -> work.claim(List.of(new Work.Stamp(UUID.randomUUID(), new Asked("x")))));
    }

    private String once(UUID id, String what) {
        return work.once(id, new Asked(what), Answer.class, () -> {
                    done.add(what);
                    return new Answer(what);
                })
                .words();
    }
}
