package org.bandtrail.frontdesk.neighbours.depot;

import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** The questions asked of supply-stock about buying: suppliers, orders, deliveries, labels. */
public final class Purchasing {
    private static final ParameterizedTypeReference<Rows<Bought.Supplier>> SUPPLIERS =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Bought.Quoted>> QUOTES = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Bought.Order>> ORDERS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Bought.Delivery>> DELIVERIES =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Bought.Sheet>> SHEETS = new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Supply-stock behind this neighbour. */
    public Purchasing(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** All suppliers, page after page. */
    public List<Bought.Supplier> suppliers() {
        return neighbour.everything(after -> neighbour.get("/suppliers", Rows.withAfter(Map.of(), after), SUPPLIERS));
    }

    /** One supplier with its quotes. */
    public Bought.WholeSupplier supplier(String supplierId) {
        return neighbour.get("/suppliers/" + supplierId, Map.of(), Bought.WholeSupplier.class);
    }

    /** What can be ordered of an item today. */
    public List<Bought.Quoted> quotes(String materialCode) {
        return neighbour
                .get("/quotes", Map.of("material", materialCode), QUOTES)
                .rows();
    }

    /** Orders, the newest first. */
    public Rows<Bought.Order> orders(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/purchases", asked, ORDERS);
    }

    /** All orders, page after page. */
    public List<Bought.Order> allOrders() {
        return neighbour.everything(after -> orders(Rows.withAfter(Map.of(), after)));
    }

    /** One order with its lines. */
    public Bought.WholeOrder order(String purchaseId) {
        return neighbour.get("/purchases/" + purchaseId, Map.of(), Bought.WholeOrder.class);
    }

    /** Deliveries, the newest first. */
    public Rows<Bought.Delivery> deliveries(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/deliveries", asked, DELIVERIES);
    }

    /** All deliveries, page after page. */
    public List<Bought.Delivery> allDeliveries() {
        return neighbour.everything(after -> deliveries(Rows.withAfter(Map.of(), after)));
    }

    /** One delivery with everything in it. */
    public Bought.WholeDelivery delivery(String deliveryId) {
        return neighbour.get("/deliveries/" + deliveryId, Map.of(), Bought.WholeDelivery.class);
    }

    /** Identities proposed for so many reels or batches of a supplier. */
    public List<String> numbers(String supplierId, int count) {
        return count == 0
                ? List.of()
                : neighbour
                        .get(
                                "/deliveries/numbers",
                                Map.of("supplier", supplierId, "count", count),
                                Bought.Numbers.class)
                        .numbers();
    }

    /** The sheets labels can be printed on. */
    public List<Bought.Sheet> sheets() {
        return neighbour.get("/labels/sheets", Map.of(), SHEETS).rows();
    }

    /** Labels as PDF. */
    public byte[] labels(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/labels.pdf", asked, byte[].class);
    }
}
