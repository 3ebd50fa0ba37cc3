package org.bandtrail.frontdesk.neighbours.field;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Problem;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** What site-installs says about the policy by which bands are cut and hung, and about kinds of devices. */
public final class Policies {
    private static final String PATH = "/policies/cut-lengths";
    private static final ParameterizedTypeReference<Rows<Version>> VERSIONS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Kind>> KINDS = new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Site-installs behind this neighbour. */
    public Policies(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** A version; values by name, lengths in mm. */
    public record Version(
            int version,
            @Nullable String programme,
            @Nullable String pest,
            LocalDate validFrom,
            @Nullable LocalDate validUntil,
            String source,
            String reason,
            String by,
            Instant publishedAt,
            Map<String, Object> values) {}

    /** What the trade says about a value. */
    public record Guide(
            String name,
            String label,
            String group,
            String unit,
            @Nullable Long low,
            @Nullable Long high,
            String source,
            String why) {}

    /** A value with the version that brought it. */
    public record Value(Guide guide, Object value, int since, String source, String reason) {}

    /** A value that another version has differently. */
    public record Difference(String name, String label, String unit, Object was, Object now) {}

    /** One version whole; against is the version it is compared with, null if none came before. */
    public record Whole(Version policy, @Nullable Integer against, List<Value> values, List<Difference> differences) {}

    /** What is asked before a version is published. */
    public record Check(List<Problem.Question> questions) {}

    /** A part of a kind of device. */
    public record Part(String name, String role, String material, boolean reusable, String source) {}

    /** A kind of device. */
    public record Kind(
            String code,
            String name,
            String what,
            boolean needsGuard,
            @Nullable String question,
            String source,
            List<String> cautions,
            List<Part> parts) {}

    /** A needed piece, in mm or counted. */
    public record Cut(
            Part part, @Nullable Long lengthMm, @Nullable Long pieces, String formula) {}

    /** The pieces of one device for a girth. */
    public record Needed(String device, long girthMm, int policyVersion, List<Cut> pieces) {}

    /** Site-installs itself, to tell it something. */
    public Neighbour tell() {
        return neighbour;
    }

    /** All versions, the newest first. */
    public List<Version> versions() {
        return neighbour.get(PATH, Map.of(), VERSIONS).rows();
    }

    /** One version; against null for the one it replaced. */
    public Whole version(int version, @Nullable Integer against) {
        return neighbour.get(
                PATH + "/" + version, against == null ? Map.of() : Map.of("against", against), Whole.class);
    }

    /** The version of the house that holds today. */
    public Whole inForce() {
        return neighbour.get(PATH + "/in-force", Map.of(), Whole.class);
    }

    /** What to ask before this version is published. */
    public Check check(Map<String, Object> version) {
        return neighbour.post(PATH + "/check", version, Check.class);
    }

    /** Publishes a version. */
    public void publish(Map<String, Object> version) {
        neighbour.send(PATH, version);
    }

    /** All kinds of devices. */
    public List<Kind> kinds() {
        return neighbour.get("/devices", Map.of(), KINDS).rows();
    }

    /**
     * The pieces of one device.
     *
     * @param girth as text with its unit
     * @param measure metric or imperial
     */
    public Needed pieces(String device, String girth, String measure) {
        return pieces(device, Map.of("girth", girth, "measure", measure));
    }

    /**
     * The pieces of one device by the policy of a day, a programme and a pest.
     *
     * @param asked girth as text with its unit, measure, and if wished on, programme, pest
     */
    public Needed pieces(String device, Map<String, Object> asked) {
        return neighbour.get("/devices/" + device + "/pieces", asked, Needed.class);
    }
}
