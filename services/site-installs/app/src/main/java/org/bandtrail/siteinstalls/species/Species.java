package org.bandtrail.siteinstalls.species;

import java.util.List;
import org.bandtrail.kernel.Length;

/**
 * What the house knows about one kind of tree.
 *
 * @param code of the EPPO list
 * @param codeSource where the code is from, {@code from memory} if nowhere
 * @param scientific name
 * @param commonNames as people say, the commonest first, at least one
 * @param hostOf the pests that live on it
 * @param lookAlikes kinds it is mistaken for
 * @param signs by which it is known
 * @param cautions for whoever handles it
 * @param largestGirthMm a girth above this is asked about, in whole millimetres
 * @param girthSource where that is from
 */
public record Species(
        EppoCode code,
        String codeSource,
        String scientific,
        List<String> commonNames,
        List<HostOf> hostOf,
        List<EppoCode> lookAlikes,
        List<String> signs,
        List<String> cautions,
        long largestGirthMm,
        String girthSource) {
    /** Keeps its own copies. */
    public Species {
        commonNames = List.copyOf(commonNames);
        hostOf = List.copyOf(hostOf);
        lookAlikes = List.copyOf(lookAlikes);
        signs = List.copyOf(signs);
        cautions = List.copyOf(cautions);
    }

    /** How much a pest takes to a tree. */
    public enum How {
        /** The pest looks for it. */
        PREFERRED,
        /** The pest lives on it too. */
        HOST
    }

    /**
     * A pest that lives on the tree.
     *
     * @param pest code of the EPPO list
     * @param how how much it takes to it
     * @param source where that is from
     */
    public record HostOf(EppoCode pest, How how, String source) {}

    /** The name for people. */
    public String name() {
        return commonNames.getFirst();
    }

    /** A girth above this is asked about. */
    public Length largestGirth() {
        return Length.ofMm(largestGirthMm);
    }
}
