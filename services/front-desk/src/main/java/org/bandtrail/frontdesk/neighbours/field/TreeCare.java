package org.bandtrail.frontdesk.neighbours.field;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Problem;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;
import org.springframework.util.MultiValueMap;

/** What site-installs knows about single trees beyond the register: host checks, photos, species. */
public final class TreeCare {
    private static final ParameterizedTypeReference<Rows<Finding>> FINDINGS = new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Site-installs behind this neighbour. */
    public TreeCare(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** The keys to hosts, one for a pest. */
    public record Keys(List<Key> keys) {}

    /** A key to the hosts of this pest. */
    public record Key(String pest, int version, String source) {}

    /** One answer of a question, with the name of its drawing. */
    public record Choice(String id, String text, @Nullable String drawing) {}

    /** A question of a key. */
    public record Question(String id, String text, String help, List<Choice> answers) {}

    /** What was answered. */
    public record Answer(String question, String answer) {}

    /** What the answers say: HOST, NOT_HOST or UNSURE. */
    public record Verdict(String outcome, @Nullable String species, int confidencePercent) {}

    /** The next question, null at the end of the key. */
    public record Next(@Nullable Question question, int number, int of, Verdict soFar) {}

    /** A stored check. */
    public record Check(
            String pest,
            int keyVersion,
            String outcome,
            @Nullable String speciesCode,
            int confidencePercent,
            List<Answer> answers,
            String by,
            Instant happenedAt) {}

    /** A band on a tree that did not pass. */
    public record Finding(
            String bandId, String treeId, @Nullable String siteId, String finding, String message) {}

    /** A photo of one thing; erasedAt is null while the picture is there. */
    public record Photo(
            String photoId,
            int width,
            int height,
            Instant attachedAt,
            String attachedBy,
            @Nullable Instant erasedAt,
            @Nullable String erasedWhy) {}

    /** A pest that lives on a kind of tree: PREFERRED or HOST. */
    public record HostOf(String pest, String how, String source) {}

    /** A pest. */
    public record Pest(String code, String name) {}

    /** A kind of tree. */
    public record Species(
            String code,
            String scientific,
            List<String> commonNames,
            List<HostOf> hostOf,
            List<String> cautions,
            @Nullable String codeSource) {
        /** The name for people. */
        public String name() {
            return commonNames.getFirst();
        }
    }

    /** What the house knows about trees and pests. */
    public record Book(List<Species> species, List<Pest> pests) {
        /** The kinds by code. */
        public Map<String, Species> kinds() {
            return species.stream().collect(Collectors.toMap(Species::code, Function.identity()));
        }

        /** The names of the pests by code. */
        public Map<String, String> pestNames() {
            return pests.stream().collect(Collectors.toMap(Pest::code, Pest::name));
        }
    }

    private record Checks(List<Check> rows) {}

    private record PhotoRows(List<Photo> rows) {}

    private record Questions(List<Problem.Question> questions) {}

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** The keys there are. */
    public List<Key> keys() {
        return neighbour.get("/host-checks/keys", Map.of(), Keys.class).keys();
    }

    /** The question after these answers. */
    public Next next(String pest, List<Answer> answers) {
        return neighbour.post("/host-checks/next", Map.of("pest", pest, "answers", answers), Next.class);
    }

    /** Every host check of a tree, the latest first. */
    public List<Check> checks(String treeId) {
        return neighbour
                .get("/host-checks", Map.of("tree", treeId), Checks.class)
                .rows();
    }

    /** Bands up on trees that did not pass. */
    public Rows<Finding> findings(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/host-checks/findings", asked, FINDINGS);
    }

    /** All of them, page after page. */
    public List<Finding> allFindings(Map<String, String> asked) {
        return neighbour.everything(after -> findings(Rows.withAfter(asked, after)));
    }

    /** The kinds of trees and the pests the house knows. */
    public Book book() {
        return neighbour.get("/species", Map.of(), Book.class);
    }

    /** What to ask before this measurement is stored. */
    public List<Problem.Question> girthQuestions(String treeId, Map<String, ? extends @Nullable Object> measured) {
        return neighbour
                .get("/trees/" + treeId + "/girths/check", measured, Questions.class)
                .questions();
    }

    /** The photos of a tree, a band or a site, the latest first. */
    public List<Photo> photos(String of, String subject) {
        return neighbour
                .get("/photos", Map.of("of", of, "subject", subject), PhotoRows.class)
                .rows();
    }

    /** The picture as JPEG. */
    public byte[] jpeg(String photoId) {
        return neighbour.get("/photos/" + photoId, Map.of(), byte[].class);
    }

    /** Attaches a photo: parts file, commandId, of and subject. */
    public void attach(MultiValueMap<String, Object> parts) {
        neighbour.upload("/photos", parts, Map.class);
    }
}
