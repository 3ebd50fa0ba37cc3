package org.bandtrail.siteinstalls.species;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that the house knows about trees and pests: one version of data with where it is from.
 *
 * @param version counted up with every edition
 * @param validFrom since when it holds
 * @param source where it is from
 * @param reason why it is so
 * @param pests that are banded against
 * @param species that are banded, and those mistaken for them
 */
public record SpeciesBook(
        int version, LocalDate validFrom, String source, String reason, List<Pest> pests, List<Species> species) {
    /** Keeps its own copies. */
    public SpeciesBook {
        pests = List.copyOf(pests);
        species = List.copyOf(species);
    }

    /** The kind of this code, empty if the book does not have it. */
    public Optional<Species> find(EppoCode code) {
        return species.stream().filter(each -> each.code().equals(code)).findFirst();
    }

    /** The pest of this code, empty if the book does not have it. */
    public Optional<Pest> pest(EppoCode code) {
        return pests.stream().filter(each -> each.code().equals(code)).findFirst();
    }

    /**
     * The kind that a text means: its code, its scientific name (an author or variety may follow), or one of its
     * common names. Empty if none or more than one fits; a guess that may be wrong is not made.
     */
    public Optional<Species> meant(String text) {
        String words = plain(text);
        List<Species> fitting = species.stream()
                .filter(each -> names(each).anyMatch(name -> fits(words, name, each)))
                .toList();
        return fitting.size() == 1 ? Optional.of(fitting.getFirst()) : Optional.empty();
    }

    private static boolean fits(String words, String name, Species species) {
        return words.equals(name) || name.equals(plain(species.scientific())) && words.startsWith(name + " ");
    }

    private static Stream<String> names(Species species) {
        return Stream.concat(
                Stream.of(plain(species.code().value()), plain(species.scientific())),
                species.commonNames().stream().map(SpeciesBook::plain));
    }

    private static String plain(String text) {
        return String.join(" ", Arrays.asList(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")))
                .strip();
    }
}
