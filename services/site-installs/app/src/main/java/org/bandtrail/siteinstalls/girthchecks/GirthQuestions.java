package org.bandtrail.siteinstalls.girthchecks;

import java.util.Optional;
import org.bandtrail.kernel.Length;
import org.bandtrail.siteinstalls.girths.GirthDoubt;
import org.bandtrail.siteinstalls.girths.GirthLimits;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.bandtrail.siteinstalls.species.Species;
import org.bandtrail.siteinstalls.species.SpeciesBook;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.jspecify.annotations.Nullable;

/** What to ask before a girth is stored: against the one before, and against what trees of its kind can reach. */
final class GirthQuestions {
    private GirthQuestions() {}

    /**
     * The question, empty if the girth is believed. The girth before counts first, because it is of this very tree.
     *
     * @param written what was measured
     * @param tree as the register has it, null for a new one
     * @param limits of the policy in force
     * @param book what is known of species
     */
    static Optional<GirthDoubt> about(
            WrittenGirth written, @Nullable TreeView tree, GirthLimits limits, SpeciesBook book) {
        Length known = tree == null || tree.girthMm() == null ? null : Length.ofMm(tree.girthMm());
        Optional<GirthDoubt> doubt = GirthDoubt.about(written, known, limits);
        if (doubt.isPresent() || tree == null) {
            return doubt;
        }
        return kind(tree, book).flatMap(kind -> GirthDoubt.ofKind(written, kind.name(), kind.largestGirth()));
    }

    private static Optional<Species> kind(TreeView tree, SpeciesBook book) {
        return tree.speciesCode() == null ? book.meant(tree.species()) : book.find(new EppoCode(tree.speciesCode()));
    }
}
