package org.bandtrail.frontdesk.neighbours.depot;

import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** The questions asked of supply-stock about stock that depots move about. */
public final class DepotWork {
    private static final ParameterizedTypeReference<Rows<Moved.Transfer>> TRANSFERS =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Moved.Bin>> BINS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Moved.Vehicle>> VEHICLES =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Moved.Aside>> ASIDE = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Moved.Slitting>> SLITTINGS =
            new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Supply-stock behind this neighbour. */
    public DepotWork(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** Transfers, the newest first. */
    public Rows<Moved.Transfer> transfers(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/transfers", asked, TRANSFERS);
    }

    /** All transfers, page after page. */
    public List<Moved.Transfer> allTransfers() {
        return neighbour.everything(after -> transfers(Rows.withAfter(Map.of(), after)));
    }

    /** One transfer. */
    public Moved.Transfer transfer(String transferId) {
        return neighbour.get("/transfers/" + transferId, Map.of(), Moved.Transfer.class);
    }

    /** All bins, page after page. */
    public List<Moved.Bin> bins() {
        return neighbour.everything(after -> neighbour.get("/bins", Rows.withAfter(Map.of(), after), BINS));
    }

    /** One bin with what lies in it. */
    public Moved.WholeBin bin(String depotId, String mark) {
        return neighbour.get("/bins/" + depotId + "/" + mark, Map.of(), Moved.WholeBin.class);
    }

    /** All vehicles. */
    public List<Moved.Vehicle> vehicles() {
        return neighbour.get("/vehicles", Map.of(), VEHICLES).rows();
    }

    /** All that stands aside, page after page. */
    public List<Moved.Aside> aside() {
        return neighbour.everything(after -> neighbour.get("/set-aside", Rows.withAfter(Map.of(), after), ASIDE));
    }

    /** Slittings, the newest first. */
    public Rows<Moved.Slitting> slittings(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/slittings", asked, SLITTINGS);
    }

    /** All slittings, page after page. */
    public List<Moved.Slitting> allSlittings() {
        return neighbour.everything(after -> slittings(Rows.withAfter(Map.of(), after)));
    }

    /** One slitting with its strips. */
    public Moved.Slitting slitting(String slittingId) {
        return neighbour.get("/slittings/" + slittingId, Map.of(), Moved.Slitting.class);
    }

    /** Labels for this many strips of a wide reel. */
    public List<String> labels(String reelId, int strips) {
        return neighbour
                .get("/slittings/labels", Map.of("reel", reelId, "strips", strips), Moved.Labels.class)
                .labels();
    }
}
