package org.bandtrail.siteinstalls.policies;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bandtrail.siteinstalls.policies.CutPolicyCommand.PublishCutLengths;
import org.bandtrail.siteinstalls.policies.CutPolicyEvent.CutLengthsPublished;

/**
 * All versions of the cut-length policy. For a pest and a programme the closest scope that has a version holding on the
 * day decides ({@link PolicyScope#fromClosest}). Within a scope the version with the latest first day is in force; of
 * two with the same first day the one published later. Publishing never changes an earlier version.
 *
 * @param versions in the order of publishing
 */
public record CutPolicy(List<CutPolicyVersion> versions) {
    /** The identity of the one policy. */
    public static final String ID = "CUT-LENGTHS";

    /** Before anything was published. */
    public static final CutPolicy NONE = new CutPolicy(List.of());

    /** Keeps its own copy. */
    public CutPolicy {
        versions = List.copyOf(versions);
    }

    /**
     * Decides a command.
     *
     * @throws CutPolicyRefused if the source or the reason is missing, if it ends before it begins, or if it is for a
     *     programme and no pest
     */
    public List<CutPolicyEvent> decide(CutPolicyCommand command) {
        return switch (command) {
            case PublishCutLengths publish -> List.of(published(publish));
        };
    }

    private CutLengthsPublished published(PublishCutLengths publish) {
        if (publish.source().isBlank()) {
            throw new CutPolicyRefused.SourceMissing(publish.validFrom());
        }
        if (publish.reason().isBlank()) {
            throw new CutPolicyRefused.ReasonMissing(publish.validFrom());
        }
        if (publish.validUntil() != null && publish.validUntil().isBefore(publish.validFrom())) {
            throw new CutPolicyRefused.EndsBeforeItBegins(publish.validFrom(), publish.validUntil());
        }
        if (publish.scope().programme() != null && publish.scope().pest() == null) {
            throw new CutPolicyRefused.PestMissing(publish.scope().programme());
        }
        return new CutLengthsPublished(
                publish.policyId(),
                versions.size() + 1,
                publish.values(),
                publish.scope(),
                publish.validFrom(),
                publish.validUntil(),
                publish.source().strip(),
                publish.reason().strip(),
                publish.by(),
                publish.when());
    }

    /** The policy after the event; an event out of order is a damaged history and throws. */
    public CutPolicy evolve(CutPolicyEvent event) {
        return switch (event) {
            case CutLengthsPublished published -> {
                if (published.version() != versions.size() + 1) {
                    throw new IllegalStateException("Version %d of the policy follows version %d."
                            .formatted(published.version(), versions.size()));
                }
                List<CutPolicyVersion> longer = new ArrayList<>(versions);
                longer.add(CutPolicyVersion.of(published));
                yield new CutPolicy(longer);
            }
        };
    }

    /** The version of the house in force on the day, empty if none is. */
    public Optional<CutPolicyVersion> on(LocalDate day) {
        return on(day, PolicyScope.HOUSE);
    }

    /** The version in force on the day for this pest and programme, else for the pest, else of the house. */
    public Optional<CutPolicyVersion> on(LocalDate day, PolicyScope wanted) {
        return wanted.fromClosest().stream()
                .flatMap(scope -> inScope(day, scope).stream())
                .findFirst();
    }

    private Optional<CutPolicyVersion> inScope(LocalDate day, PolicyScope scope) {
        return versions.stream()
                .filter(version -> version.scope().equals(scope) && version.holds(day))
                .max(Comparator.comparing(CutPolicyVersion::validFrom).thenComparing(CutPolicyVersion::version));
    }

    /** The version of the house that holds first, empty if there is none. */
    public Optional<CutPolicyVersion> first() {
        return versions.stream()
                .filter(version -> version.scope().equals(PolicyScope.HOUSE))
                .min(Comparator.comparing(CutPolicyVersion::validFrom)
                        .thenComparing(
                                Comparator.comparing(CutPolicyVersion::version).reversed()));
    }
}
