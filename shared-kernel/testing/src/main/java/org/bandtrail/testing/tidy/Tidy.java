package org.bandtrail.testing.tidy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Rules over the sources of the whole repository, for what byte code does not show: sizes, words left behind, links,
 * the map in the README, names of tests, texts of packages, numbers of migrations. Runs once, in this module. What is
 * not tidy yet stands in a list of exceptions with its size and the reason; the list only gets shorter.
 */
public final class Tidy {
    private static final List<Function<SourceTree, List<Complaint>>> RULES = List.of(
            TidySizes::longFiles,
            TidySizes::longLines,
            TidySizes::fullPackages,
            TidyJava::complaints,
            TidyWords::leftovers,
            TidyMarkdown::brokenLinks,
            TidyMarkdown::mapDiffers,
            TidyNames::testsNobodyRuns,
            TidyNames::packagesWithoutText,
            TidyNames::migrationsOfOneNumber);

    private Tidy() {}

    /**
     * Checks the repository around the working directory.
     *
     * @param exceptions lines of the list of exceptions, see the list itself
     * @throws AssertionError that lists everything untidy
     */
    public static void check(List<String> exceptions) {
        List<String> untidy = complaints(SourceTree.rootAround(Path.of("")), exceptions);
        if (!untidy.isEmpty()) {
            throw new AssertionError("%d untidy things:%n%s".formatted(untidy.size(), String.join("\n", untidy)));
        }
    }

    static List<String> complaints(Path root, List<String> exceptions) {
        SourceTree tree;
        try {
            tree = SourceTree.read(root);
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read the tree at [%s].".formatted(root), failed);
        }
        List<Complaint> complaints = new ArrayList<>();
        RULES.forEach(rule -> complaints.addAll(rule.apply(tree)));
        return TidyExceptions.parse(exceptions).apply(complaints);
    }
}
