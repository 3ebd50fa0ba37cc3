package org.bandtrail.supplystock.counts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.supplystock.AtOnce;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.OverHttp;
import org.bandtrail.supplystock.holdings.Place;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Several people open counts at the same moment: no shelf is ever in two of them. */
@OnPostgres
class CountsAtOnceTest {
    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @Autowired
    Work work;

    @Autowired
    OpenScopes scopes;

    /** The place, or nothing if it was refused. */
    private String take(String count, Place place) {
        try {
            return work.inOneTransaction(() -> {
                scopes.take(new CountId(count), place);
                return place.toString();
            });
        } catch (CountRefused.CountOpenAlready refused) {
            assertThat(refused).hasMessageContaining(place.toString());
            return "";
        }
    }

    @Test
    void of_counts_opened_at_once_no_two_overlap() {
        DepotId depot = new DepotId("CA-YARD");
        List<Place> wanted = List.of(
                Place.depot(depot),
                Place.bin(depot, "A-1"),
                Place.bin(depot, "A-1"),
                Place.bin(depot, "A-2"),
                Place.depot(depot),
                Place.bin(depot, "A-2"));
        for (int round = 0; round < 10; round++) {
            List<Callable<String>> people = new ArrayList<>();
            for (int number = 0; number < wanted.size(); number++) {
                String count = "CA-%d-%d".formatted(round, number);
                Place place = wanted.get(number);
                people.add(() -> take(count, place));
            }

            List<String> taken = AtOnce.all(people).stream()
                    .filter(place -> !place.isEmpty())
                    .toList();

            assertThat(taken).isNotEmpty().doesNotHaveDuplicates();
            if (taken.contains("depot:CA-YARD")) {
                assertThat(taken).as("the depot alone").hasSize(1);
            }
            for (int number = 0; number < wanted.size(); number++) {
                CountId count = new CountId("CA-%d-%d".formatted(round, number));
                work.inOneTransaction(() -> {
                    scopes.giveBack(count);
                    return count;
                });
            }
        }
    }

    @Test
    void a_place_is_free_again_once_its_count_is_cancelled() {
        OverHttp http = new OverHttp(port, key, "P-LEAD");
        http.ok("/counts", "{\"countId\": \"CAH-1\", \"place\": \"depot:CAH-YARD\"}");
        assertThat(http.refused(409, "/counts", "{\"countId\": \"CAH-2\", \"place\": \"depot:CAH-YARD/A-1\"}"))
                .contains("CAH-1");
        http.ok("/counts/CAH-1/cancel", "{\"reason\": \"rain\", \"commandId\": \"%s\"}".formatted(UUID.randomUUID()));
        http.ok("/counts", "{\"countId\": \"CAH-2\", \"place\": \"depot:CAH-YARD/A-1\"}");
    }
}
