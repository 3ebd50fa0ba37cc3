package org.bandtrail.frontdesk.neighbours.money;

import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** The questions about invoices, freight, write-downs and tolerances asked of supply-stock. */
public final class Invoicing {
    private static final ParameterizedTypeReference<Rows<Papers.Invoice>> INVOICES =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Papers.Supplier>> SUPPLIERS =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Papers.OrderLine>> ORDER_LINES =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<LandedCosts.Row>> LANDED =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<LandedCosts.Delivery>> DELIVERIES =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<LandedCosts.WriteDown>> WRITE_DOWNS =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<LandedCosts.Policy>> POLICIES =
            new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Supply-stock behind this neighbour. */
    public Invoicing(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** Invoices by state, supplier or text, newest first. */
    public Rows<Papers.Invoice> invoices(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/invoices", asked, INVOICES);
    }

    /** All invoices, page after page. */
    public List<Papers.Invoice> allInvoices() {
        return neighbour.everything(after -> invoices(Rows.withAfter(Map.of(), after)));
    }

    /** One invoice beside orders and deliveries. */
    public Papers.Whole invoice(String invoiceId) {
        return neighbour.get("/invoices/" + invoiceId, Map.of(), Papers.Whole.class);
    }

    /** A paper before it is kept. */
    public Papers.Preview preview(Map<String, ?> look) {
        return neighbour.post("/invoices/preview", look, Papers.Preview.class);
    }

    /** Order lines of a supplier. */
    public List<Papers.OrderLine> orderLines(String supplierId) {
        return neighbour
                .get("/invoices/order-lines", Map.of("supplier", supplierId), ORDER_LINES)
                .rows();
    }

    /** All suppliers. */
    public List<Papers.Supplier> suppliers() {
        return neighbour.everything(after -> neighbour.get("/suppliers", Rows.withAfter(Map.of(), after), SUPPLIERS));
    }

    /** Freight and duty, newest first. */
    public Rows<LandedCosts.Row> landedCosts(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/landed-costs", asked, LANDED);
    }

    /** All of it, page after page. */
    public List<LandedCosts.Row> allLandedCosts() {
        return neighbour.everything(after -> landedCosts(Rows.withAfter(Map.of(), after)));
    }

    /** One landed cost with its shares. */
    public LandedCosts.Whole landedCost(String landedCostId) {
        return neighbour.get("/landed-costs/" + landedCostId, Map.of(), LandedCosts.Whole.class);
    }

    /** What an amount would do. */
    public LandedCosts.Preview landedPreview(Map<String, ?> look) {
        return neighbour.post("/landed-costs/preview", look, LandedCosts.Preview.class);
    }

    /** The newest deliveries. */
    public List<LandedCosts.Delivery> deliveries() {
        return neighbour.get("/landed-costs/deliveries", Map.of(), DELIVERIES).rows();
    }

    /** Write-downs, newest first. */
    public Rows<LandedCosts.WriteDown> writeDowns(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/write-downs", asked, WRITE_DOWNS);
    }

    /** All write-downs, page after page. */
    public List<LandedCosts.WriteDown> allWriteDowns() {
        return neighbour.everything(after -> writeDowns(Rows.withAfter(Map.of(), after)));
    }

    /** What one reel ({@code REEL}) or batch ({@code BATCH}) stands at. */
    public LandedCosts.Worth worth(String holding, String id) {
        return neighbour.get("/write-downs/worth", Map.of("holding", holding, "id", id), LandedCosts.Worth.class);
    }

    /** Every policy, the one that holds first. */
    public List<LandedCosts.Policy> policies() {
        return neighbour.get("/tolerances", Map.of(), POLICIES).rows();
    }
}
