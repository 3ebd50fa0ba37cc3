package org.bandtrail.frontdesk.neighbours.depot;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.money.Books;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** Traces and recalls of supply-stock. */
public final class Tracing {
    private static final ParameterizedTypeReference<Rows<Traced.Found>> FOUND = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Traced.Part>> PARTS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Traced.At>> PLACES = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Traced.Recall>> RECALLS =
            new ParameterizedTypeReference<>() {};
    private static final int WHOLE = 1_000;

    private final Neighbour neighbour;

    /** Supply-stock behind this neighbour. */
    public Tracing(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** The audit with every row counted again; takes some seconds for millions of moves. */
    public Books.Audit recount() {
        return neighbour.get("/audit", Map.of("recount", true), Books.Audit.class);
    }

    /** What bears this identity. */
    public List<Traced.Found> found(String text) {
        return neighbour.get("/traces/found", Map.of("find", text), FOUND).rows();
    }

    /** The trace in short. */
    public Traced.Trace trace(Traced.Found of) {
        return neighbour.get("/traces", subject(of), Traced.Trace.class);
    }

    /** One page of its reels and batches. */
    public Rows<Traced.Part> parts(Traced.Found of, @Nullable String after, int limit) {
        return neighbour.get("/traces/holdings", asked(of, after, limit), PARTS);
    }

    /** All its reels and batches. */
    public List<Traced.Part> allParts(Traced.Found of) {
        return neighbour.everything(after -> parts(of, after, WHOLE));
    }

    /** One page of the places that hold or held something of it. */
    public Rows<Traced.At> places(Traced.Found of, @Nullable String kind, @Nullable String after, int limit) {
        Map<String, Object> asked = asked(of, after, limit);
        asked.put("kind", kind == null ? "" : kind);
        return neighbour.get("/traces/places", asked, PLACES);
    }

    /** All places that hold or held something of it. */
    public List<Traced.At> allPlaces(Traced.Found of) {
        return neighbour.everything(after -> places(of, null, after, WHOLE));
    }

    private static Map<String, Object> subject(Traced.Found of) {
        Map<String, Object> subject = new HashMap<>(Map.of("what", of.what(), "id", of.id()));
        if (of.supplierId() != null) {
            subject.put("supplier", of.supplierId());
        }
        return subject;
    }

    private static Map<String, Object> asked(Traced.Found of, @Nullable String after, int limit) {
        Map<String, Object> asked = subject(of);
        asked.put("limit", limit);
        asked.put("after", after == null ? "" : after);
        return asked;
    }

    /** One page of recalls, the newest first. */
    public Rows<Traced.Recall> recalls(@Nullable String after, int limit) {
        Map<String, Object> asked = new HashMap<>(Map.of("limit", limit));
        asked.put("after", after == null ? "" : after);
        return neighbour.get("/recalls", asked, RECALLS);
    }

    /** All recalls. */
    public List<Traced.Recall> allRecalls() {
        return neighbour.everything(after -> recalls(after, WHOLE));
    }

    /** One recall with where the lot is. */
    public Traced.Recalled recall(String recallId) {
        return neighbour.get("/recalls/" + recallId, Map.of(), Traced.Recalled.class);
    }

    /**
     * One page of where something of a recalled lot is now, at these kinds of places parted by commas; empty for
     * all.
     */
    public Rows<Traced.At> stillAt(String recallId, String kinds, @Nullable String after, int limit) {
        Map<String, Object> asked = new HashMap<>(Map.of("kind", kinds, "limit", limit));
        asked.put("after", after == null ? "" : after);
        return neighbour.get("/recalls/" + recallId + "/places", asked, PLACES);
    }

    /** All of where something of a recalled lot is now. */
    public List<Traced.At> allStillAt(String recallId) {
        return neighbour.everything(after -> stillAt(recallId, "", after, WHOLE));
    }
}
