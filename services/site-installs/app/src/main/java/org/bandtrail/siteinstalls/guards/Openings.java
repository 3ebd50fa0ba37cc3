package org.bandtrail.siteinstalls.guards;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bandtrail.kernel.Length;
import org.springframework.core.io.ClassPathResource;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Who gets through which opening of a mesh, the smallest first. */
public record Openings(List<Opening> known) {
    private static final Openings HOUSE = read();

    /** Sorts them. */
    public Openings {
        known = known.stream().sorted(Comparator.comparingInt(Opening::overMm)).toList();
    }

    /** The house's own, from {@code defaults/guard-openings.json}. */
    public static Openings house() {
        return HOUSE;
    }

    /** The largest animal that gets through this opening, empty if none of those known does. */
    public Optional<Opening> largestThrough(Length opening) {
        return known.stream().filter(each -> opening.mm() > each.overMm()).reduce((smaller, larger) -> larger);
    }

    private static Openings read() {
        try (var file = new ClassPathResource("defaults/guard-openings.json").getInputStream()) {
            return new Openings(JsonMapper.builder().build().readValue(file, new TypeReference<List<Opening>>() {}));
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The openings of guards cannot be read.", unreadable);
        }
    }
}
