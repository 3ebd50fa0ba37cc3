package org.bandtrail.supplystock.ledger;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.costpolicies.CostPolicyEvent;
import org.bandtrail.supplystock.crews.CrewEvent;
import org.bandtrail.supplystock.periods.PeriodEvent;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Keeps the ledger: a page is loaded, posted and written as sets, and each event counts once, however often it comes.
 */
@Component
final class LedgerProjection implements Projection {
    private final Loading loading;
    private final Writing writing;

    LedgerProjection(JdbcClient jdbc) {
        this.loading = new Loading(jdbc);
        this.writing = new Writing(jdbc);
    }

    @Override
    public String name() {
        return "ledger";
    }

    @Override
    public List<String> tables() {
        return List.of(
                "ledger_line",
                "ledger_state",
                "ledger_crew",
                "ledger_holding",
                "ledger_place",
                "ledger_layer",
                "ledger_payer",
                "ledger_method",
                "ledger_trial",
                "ledger_account",
                "ledger_day");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(ReelEvent.class, BatchEvent.class, PeriodEvent.class, CostPolicyEvent.class, CrewEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        long position = loading.position();
        List<StoredEvent> news =
                page.stream().filter(stored -> stored.position() > position).toList();
        if (news.isEmpty()) {
            return;
        }
        Page books = loading.page(news.stream().flatMap(LedgerProjection::fact).toList());
        for (StoredEvent stored : news) {
            switch (stored.payload()) {
                case PeriodEvent event -> books.month(event);
                case CostPolicyEvent event -> books.policy(event);
                case CrewEvent event -> books.crews.hear(event);
                default -> fact(stored).forEach(books::post);
            }
        }
        writing.write(books, news.getLast().position());
    }

    private static Stream<Fact> fact(StoredEvent stored) {
        return switch (stored.payload()) {
            case ReelEvent event -> Stream.of(Facts.of(stored.position(), event));
            case BatchEvent event -> Stream.of(Facts.of(stored.position(), event));
            case PeriodEvent event -> Stream.empty();
            case CostPolicyEvent event -> Stream.empty();
            case CrewEvent event -> Stream.empty();
            default ->
                throw new IllegalArgumentException(
                        "Event [%s] is none of the ledger's.".formatted(Objects.toString(stored.payload())));
        };
    }
}
