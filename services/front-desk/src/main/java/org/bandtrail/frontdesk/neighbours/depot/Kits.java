package org.bandtrail.frontdesk.neighbours.depot;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** The questions about kits and custody, asked of supply-stock. */
public final class Kits {
    private static final ParameterizedTypeReference<Rows<Kit.Life>> LIVES = new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Supply-stock behind this neighbour. */
    public Kits(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** Kits, newest first, by state or person. */
    public Rows<Kit.Life> kits(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/kits", asked, LIVES);
    }

    /** All kits. */
    public List<Kit.Life> all() {
        return neighbour.everything(after -> kits(Rows.withAfter(Map.of("limit", "1000"), after)));
    }

    /** One kit with everything about it. */
    public Kit.Whole kit(String kitId) {
        return neighbour.get("/kits/" + kitId, Map.of(), Kit.Whole.class);
    }

    /** The pick sheet on paper, with the person's name. */
    public byte[] pickSheet(String kitId, String units, String name) {
        return neighbour.get("/kits/" + kitId + "/pick-sheet.pdf", Map.of("units", units, "name", name), byte[].class);
    }

    /** The usual rule from girth to lengths. */
    public Kit.Rule rule() {
        return neighbour.get("/kits/rule", Map.of(), Kit.Rule.class);
    }

    /** One page of what was in people's care. */
    public Kit.Custody custody(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/custody", asked, Kit.Custody.class);
    }

    /** All that was in people's care. */
    public List<Kit.Held> allCustody(Map<String, String> asked) {
        return neighbour.everything(after -> {
            Map<String, @Nullable Object> page = new HashMap<>(asked);
            page.put("after", after);
            page.put("limit", 1000);
            Kit.Custody custody = custody(page);
            return new Rows<>(custody.rows(), custody.next());
        });
    }
}
