package org.bandtrail.frontdesk.neighbours.depot;

import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.money.Books;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** The questions asked of supply-stock, the one ledger of material. */
public final class SupplyStock {
    private static final ParameterizedTypeReference<Rows<Stock.Reel>> REELS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Stock.Batch>> BATCHES = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Stock.Item>> ITEMS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Stock.Depot>> DEPOTS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Stock.Crew>> CREWS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Stock.Handout>> HANDOUTS =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Books.ReorderPoint>> REORDER =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Stock.AtPlace>> PLACES = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Stock.AtSite>> SITES = new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Supply-stock behind this neighbour. */
    public SupplyStock(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** Where everything is. */
    public Stock.Trail trail() {
        return neighbour.get("/trail", Map.of(), Stock.Trail.class);
    }

    /** The laws and what does not add up. */
    public Books.Audit audit() {
        return neighbour.get("/audit", Map.of(), Books.Audit.class);
    }

    /** Reels by material, place (kind:id) or text. */
    public Rows<Stock.Reel> reels(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/reels", asked, REELS);
    }

    /** All reels that answer to this, page after page. */
    public List<Stock.Reel> allReels(Map<String, String> asked) {
        return neighbour.everything(after -> reels(Rows.withAfter(asked, after)));
    }

    /** One reel with places and history. */
    public Stock.WholeReel reel(String reelId) {
        return neighbour.get("/reels/" + reelId, Map.of(), Stock.WholeReel.class);
    }

    /** Batches of fasteners. */
    public Rows<Stock.Batch> batches(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/batches", asked, BATCHES);
    }

    /** All batches that answer to this, page after page. */
    public List<Stock.Batch> allBatches(Map<String, String> asked) {
        return neighbour.everything(after -> batches(Rows.withAfter(asked, after)));
    }

    /** One batch with places and history. */
    public Stock.WholeBatch batch(String batchId) {
        return neighbour.get("/batches/" + batchId, Map.of(), Stock.WholeBatch.class);
    }

    /** All supply items. */
    public List<Stock.Item> items() {
        return neighbour.everything(after -> neighbour.get("/items", Rows.withAfter(Map.of(), after), ITEMS));
    }

    /** All depots. */
    public List<Stock.Depot> depots() {
        return neighbour.everything(after -> neighbour.get("/depots", Rows.withAfter(Map.of(), after), DEPOTS));
    }

    /** All crews. */
    public List<Stock.Crew> crews() {
        return neighbour.everything(after -> neighbour.get("/crews", Rows.withAfter(Map.of(), after), CREWS));
    }

    /** Kits handed out, newest first. */
    public Rows<Stock.Handout> handouts(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/handouts", asked, HANDOUTS);
    }

    /** All kits handed out. */
    public List<Stock.Handout> allHandouts() {
        return neighbour.everything(after -> handouts(Rows.withAfter(Map.of(), after)));
    }

    /** One page of places with something at them, in the order of their names. */
    public Rows<Stock.AtPlace> atPlaces(String after, int limit) {
        return neighbour.get("/whereabouts", Map.of("by", "place", "after", after, "limit", limit), PLACES);
    }

    /** What hangs on the trees of each site now. */
    public List<Stock.AtSite> atSites() {
        return neighbour.get("/whereabouts", Map.of("by", "site"), SITES).rows();
    }

    /** Reorder points of all items and depots. */
    public List<Books.ReorderPoint> reorderPoints() {
        return neighbour.everything(
                after -> neighbour.get("/reorder-points", Rows.withAfter(Map.of(), after), REORDER));
    }
}
