package org.bandtrail.supplystock.causes;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.jspecify.annotations.Nullable;

/** Looks for facts that came late, and for signs that one is still to come. */
final class LateEntries {
    private final Case open;
    private final CausePolicy policy;
    private final Words words;

    LateEntries(Case open, CausePolicy policy, Words words) {
        this.open = open;
        this.policy = policy;
        this.words = words;
    }

    List<Cause> causes() {
        if (!open.pieces() && Math.abs(open.gap()) < policy.shortestPieceMm()) {
            return List.of();
        }
        List<Cause> causes = new ArrayList<>();
        if (open.custody().isPersons() && open.gap() > 0) {
            quietBeforeTheReturn().ifPresent(causes::add);
            bandWithout().ifPresent(causes::add);
            habit().ifPresent(causes::add);
        } else if (open.custody().isPersons()) {
            toldAfterItWasGivenUp().ifPresent(causes::add);
            neverEntered().ifPresent(causes::add);
        } else if (open.gap() < 0) {
            causes.add(cause(
                    20,
                    "Less went %s in the books than came from there; what was done there before may not be told yet."
                            .formatted(words.at(open.place())),
                    null));
        }
        return causes;
    }

    /** Nobody told anything for hours before the reel came back: a telephone may hold what was done in between. */
    private Optional<Cause> quietBeforeTheReturn() {
        Instant handedOut = open.touches().stream()
                .filter(touch -> touch.change() > 0)
                .map(touch -> touch.told().happened())
                .filter(at -> !at.isAfter(open.since()))
                .max(Comparator.naturalOrder())
                .orElse(open.since());
        Instant last = open.fromPerson().stream()
                .map(Told::happened)
                .filter(at -> at.isBefore(open.since()) && at.isAfter(handedOut))
                .max(Comparator.naturalOrder())
                .orElse(handedOut);
        Duration quiet = Duration.between(last, open.since());
        if (quiet.compareTo(policy.quietAfter()) < 0) {
            return Optional.empty();
        }
        String from = last.equals(handedOut) ? "After the handout" : "Before the reel came back";
        return Optional.of(cause(
                60,
                "%s nothing was told from %s for %s; what was done then may still be on its way."
                        .formatted(from, open.place().id(), Words.time(quiet)),
                null));
    }

    /** A band that got other material from this person, but nothing of this kind. */
    private Optional<Cause> bandWithout() {
        String kind = open.subject().kind();
        if (!"TAPE".equals(kind)) {
            return Optional.empty();
        }
        Map<String, List<Told>> byFact = open.fromPerson().stream()
                .filter(told -> told.fact() != null && told.target().kind() == PlaceKind.TREE)
                .collect(Collectors.groupingBy(told -> Objects.requireNonNull(told.fact())));
        return byFact.entrySet().stream()
                .filter(fact -> fact.getValue().stream().noneMatch(told -> Objects.equals(kind, told.kind())))
                .sorted(Map.Entry.comparingByKey())
                .findFirst()
                .map(fact -> cause(
                        58,
                        "%s went up %s with other material from %s but without tape; its tape may not be told yet."
                                .formatted(
                                        Words.sentence(fact.getKey()),
                                        words.at(fact.getValue().getFirst().target()),
                                        open.place().id()),
                        fact.getValue().getFirst().target()));
    }

    private Optional<Cause> habit() {
        return open.fromPerson().stream()
                .max(Comparator.comparing(Told::delay))
                .filter(told -> told.delay().compareTo(policy.lateAfter()) > 0)
                .map(told -> cause(
                        30,
                        "What %s did on %s reached the books %s later; more of it may be on its way."
                                .formatted(open.place().id(), words.day(told.happened()), Words.time(told.delay())),
                        null));
    }

    /** A late fact after the same amount had been written off or a return had closed the custody. */
    private Optional<Cause> toldAfterItWasGivenUp() {
        boolean givenUp = open.subject().told().stream()
                .anyMatch(told -> open.custody().holds(told.source())
                        && told.target().equals(Place.WRITTEN_OFF)
                        && told.quantity() >= -open.gap());
        return open.touches().stream()
                .filter(touch -> touch.change() < 0 && policy.near(touch.change(), open.gap()))
                .filter(touch -> touch.told().delay().compareTo(policy.lateAfter()) > 0)
                .findFirst()
                .map(touch -> cause(
                        givenUp ? 85 : 50,
                        "%s %s was told %s after it happened%s."
                                .formatted(
                                        words.much(touch.quantity()),
                                        words.at(touch.outside()),
                                        Words.time(touch.told().delay()),
                                        givenUp ? ", when as much had been written off already" : ""),
                        touch.outside()));
    }

    /** Used, but by the books never received, or never handed out. */
    private Optional<Cause> neverEntered() {
        if (open.subject().kind() == null) {
            return Optional.of(cause(
                    62,
                    "The receipt of %s is not in the books, though it is in use."
                            .formatted(open.subject().id()),
                    null));
        }
        return open.subject().balances().entrySet().stream()
                .filter(balance -> balance.getKey().kind() == PlaceKind.DEPOT && balance.getValue() >= -open.gap())
                .findFirst()
                .map(balance -> cause(
                        60,
                        "The books still have %s of %s %s; its handout to %s may not be entered yet."
                                .formatted(
                                        words.much(balance.getValue()),
                                        open.subject().id(),
                                        words.at(balance.getKey()),
                                        open.place().id()),
                        balance.getKey()));
    }

    private Cause cause(int weight, String evidence, @Nullable Place through) {
        return new Cause(CauseKind.LATE_ENTRY, weight, evidence, null, through, Math.abs(open.gap()));
    }
}
