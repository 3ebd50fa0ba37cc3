package org.bandtrail.frontdesk.neighbours.money;

import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** Variances of supply-stock. Quantities are millimetres or pieces, money minor units; above zero is unfavourable. */
public final class Variances {
    private static final ParameterizedTypeReference<Rows<Price>> PRICES = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Use>> USES = new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Supply-stock behind this neighbour. */
    public Variances(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** Price paid against price quoted, by month and item, the oldest first. */
    public List<Price> prices() {
        return neighbour.everything(
                after -> neighbour.get("/variances/prices", Rows.withAfter(Map.of("limit", "1000"), after), PRICES));
    }

    /** Use against plan, by month and item, the oldest first. */
    public List<Use> uses() {
        return neighbour.everything(
                after -> neighbour.get("/variances/uses", Rows.withAfter(Map.of("limit", "1000"), after), USES));
    }

    /** One item in one month's invoices; standard and variance are null where no standard price is known. */
    public record Price(
            YearMonth month,
            String materialCode,
            String kind,
            String currency,
            long quantity,
            long paidMinor,
            @Nullable Long standardMinor,
            @Nullable Long varianceMinor,
            long byQuote,
            long lines) {}

    /** One item in one month's settled kits; the variance is null where no usual cost is known. */
    public record Use(
            YearMonth month,
            String materialCode,
            String kind,
            long kits,
            long planned,
            long used,
            long missing,
            @Nullable String currency,
            @Nullable Long varianceMinor) {}
}
