package org.bandtrail.frontdesk.neighbours.field;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Problem;
import org.jspecify.annotations.Nullable;

/** What site-installs says. Lengths in mm. */
public final class Installs {
    private Installs() {}

    /** A site. */
    public record Site(
            String siteId,
            String name,
            @Nullable Double lat,
            @Nullable Double lon,
            @Nullable String accessNotes,
            @Nullable Long trees,
            @Nullable Long bandsUp) {}

    /** A tree; history and bands come with one tree only. */
    public record Tree(
            String treeId,
            String siteId,
            @Nullable String tag,
            @Nullable String species,
            @Nullable String speciesCode,
            @Nullable Double lat,
            @Nullable Double lon,
            @Nullable Long girthMm,
            @Nullable Long girthHeightMm,
            @Nullable Instant girthMeasuredAt,
            @Nullable String note,
            @Nullable Instant goneAt,
            @Nullable String goneHow,
            @Nullable Long bandsUp,
            @Nullable List<TreeStep> history,
            @Nullable List<Band> bands,
            @Nullable String mergedInto,
            @Nullable List<MergedTree> merged) {}

    /** A tree that turned out to be another one. */
    public record MergedTree(
            String treeId, String tag, @Nullable Instant mergedAt) {}

    /** One line of a tree's history; treeId is the tree for which it was written, perhaps one merged into it. */
    public record TreeStep(
            @Nullable String treeId,
            @Nullable Boolean afterMerge,
            String what,
            @Nullable Instant happenedAt,
            @Nullable Instant recordedAt,
            @Nullable String by,
            @Nullable Long girthMm,
            @Nullable Long girthHeightMm,
            @Nullable String bandId,
            @Nullable String note) {}

    /** A band; history comes with one band only. */
    public record Band(
            String bandId,
            String treeId,
            @Nullable String siteId,
            String state,
            @Nullable Instant fittedAt,
            @Nullable Instant takenDownAt,
            @Nullable String crewId,
            @Nullable String personId,
            @Nullable String tapeReelId,
            @Nullable Long tapeMm,
            @Nullable String meshReelId,
            @Nullable Long meshMm,
            @Nullable Long pieces,
            @Nullable Long girthMm,
            @Nullable Long heightMm,
            @Nullable LocalDate mustRemoveBy,
            @Nullable Integer policyVersion,
            @Nullable String device,
            @Nullable Integer position,
            @Nullable String deviation,
            @Nullable Long seamMm,
            @Nullable Boolean guardClosedBelow,
            @Nullable String programme,
            @Nullable String pest,
            @Nullable List<String> alsoUsed,
            @Nullable List<Flag> flags,
            @Nullable List<BandStep> history) {

        /** Tells whether the band is on its tree. */
        public boolean isUp() {
            return state.equalsIgnoreCase("up");
        }

        /** What was found about it and is still so. */
        public List<Flag> openFlags() {
            return flags == null
                    ? List.of()
                    : flags.stream().filter(Flag::isOpen).toList();
        }

        /** What was found about it when it was fitted and has settled since. */
        public List<Flag> settledFlags() {
            return flags == null
                    ? List.of()
                    : flags.stream().filter(flag -> !flag.isOpen()).toList();
        }
    }

    /** Something odd about a fact that was accepted all the same. */
    public record Flag(
            @Nullable String flag,
            @Nullable String message,
            @Nullable Boolean open) {
        /** Something odd that is so now. */
        public Flag(@Nullable String flag, @Nullable String message) {
            this(flag, message, null);
        }

        /** Whether it is still so; what nobody says is still so. */
        public boolean isOpen() {
            return open == null || open;
        }
    }

    /** One line of a band's history. */
    public record BandStep(
            String what,
            @Nullable Instant happenedAt,
            @Nullable Instant recordedAt,
            @Nullable String by,
            @Nullable String note) {}

    /** Proposed lengths for a girth, with the policy they follow. */
    public record Proposal(
            long girthMm,
            long tapeMm,
            long meshMm,
            @Nullable Long standOffMm,
            long fasteners,
            @Nullable Long heightMm,
            @Nullable String policyVersion,
            @Nullable String formula,
            @Nullable List<String> cautions) {}

    /** Slips to confirm before a band is sent. */
    public record Check(List<Problem.Question> questions) {}

    /** A band was stored. */
    public record Fitted(String bandId, @Nullable List<Flag> flags) {}

    /**
     * A file of trees before anything is stored.
     *
     * @param selected rows that the mapping chose, for example the living trees
     */
    public record ImportPreview(
            String importId,
            @Nullable List<String> columns,
            long rowCount,
            long selected,
            long ready,
            List<ImportProblem> problems,
            List<ImportQuestion> questions,
            @Nullable List<String> notes,
            @Nullable List<ImportRow> sample) {}

    /** A value that can be stored but is doubted. */
    public record ImportQuestion(
            long row, String column, String value, @Nullable String perhaps, String message) {}

    /** A row as it would be stored. */
    public record ImportRow(long row, String treeId, String siteId, String tag, String species, long girthMm) {}

    /** What is wrong with one cell. */
    public record ImportProblem(
            long row,
            @Nullable String column,
            @Nullable String value,
            String problem,
            @Nullable String advice) {}

    /** A kept file: its columns and what they probably mean, by the names of the form's fields. */
    public record ImportFile(String fileId, List<String> columns, List<String> notes, Map<String, String> proposal) {}

    /** Trees stored so far, of how many, and whether that is all. */
    public record Stored(long stored, long total, boolean finished) {}

    /** An import; stored is null before its end, progress before its beginning. */
    public record Import(
            String importId,
            @Nullable Long stored,
            @Nullable ImportProgress progress,
            List<String> leftOut) {}

    /** Trees stored so far, of how many. */
    public record ImportProgress(long done, long total) {}
}
