package org.bandtrail.supplystock.discrepancies;

import java.time.Duration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.bandtrail.supplystock.causes.Case;
import org.bandtrail.supplystock.causes.LabelSlip;
import org.bandtrail.supplystock.causes.Suspect;
import org.bandtrail.supplystock.causes.Told;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Puts together, for a page of open questions, what the finder of causes has to know. */
@Component
class Cases {
    /** What a person did this long before the last move counts as about that time (common practice, no source). */
    private static final Duration ABOUT = Duration.ofDays(3);

    private final Evidence reels;
    private final Evidence batches;

    Cases(JdbcClient jdbc) {
        this.reels = new Evidence(jdbc, "reel");
        this.batches = new Evidence(jdbc, "batch");
    }

    /** A case for each question whose reel or batch is in the books. */
    Map<OpenQuestion, Case> of(List<OpenQuestion> page) {
        List<OpenQuestion> ofPeople =
                page.stream().filter(question -> persons(question.place())).toList();
        Map<String, Set<String>> reelsHad = reels.had(ofPeople);
        Map<String, Set<String>> batchesHad = batches.had(ofPeople);
        Map<String, Suspect> reelSuspects = suspects(reels, page, OpenQuestion::reel, reelsHad);
        Map<String, Suspect> batchSuspects = suspects(batches, page, question -> !question.reel(), batchesHad);
        Map<OpenQuestion, Case> cases = new HashMap<>();
        for (OpenQuestion question : page) {
            Map<String, Suspect> own = question.reel() ? reelSuspects : batchSuspects;
            Suspect subject = own.get(question.finding().id());
            if (subject != null) {
                String person = question.place().id();
                Set<String> had = (question.reel() ? reelsHad : batchesHad).getOrDefault(person, Set.of());
                cases.put(
                        question,
                        new Case(
                                subject,
                                !question.reel(),
                                question.place(),
                                question.finding().quantity(),
                                question.finding().since(),
                                others(subject, own, had),
                                Stream.concat(
                                                fromPerson(question, reelSuspects, reelsHad),
                                                fromPerson(question, batchSuspects, batchesHad))
                                        .toList()));
            }
        }
        return cases;
    }

    private static Map<String, Suspect> suspects(
            Evidence evidence, List<OpenQuestion> page, Predicate<OpenQuestion> which, Map<String, Set<String>> had) {
        Set<String> subjects = new LinkedHashSet<>();
        page.stream().filter(which).map(question -> question.finding().id()).forEach(subjects::add);
        Set<String> all = new HashSet<>(subjects);
        all.addAll(evidence.oneApart(subjects));
        had.values().forEach(all::addAll);
        return evidence.suspects(all);
    }

    private static List<Suspect> others(Suspect subject, Map<String, Suspect> all, Set<String> had) {
        return all.values().stream()
                .filter(other -> !other.id().equals(subject.id()))
                .filter(other -> had.contains(other.id()) || LabelSlip.oneApart(subject.id(), other.id()))
                .toList();
    }

    /** What the question's person gave to the field about that time, of these reels or batches. */
    private static Stream<Told> fromPerson(
            OpenQuestion question, Map<String, Suspect> all, Map<String, Set<String>> had) {
        Place place = question.place();
        if (!persons(place)) {
            return Stream.of();
        }
        return had.getOrDefault(place.id(), Set.of()).stream()
                .map(all::get)
                .filter(Objects::nonNull)
                .flatMap(suspect -> suspect.told().stream())
                .filter(told -> persons(told.source())
                        && told.source().id().equals(place.id())
                        && field(told.target())
                        && told.happened().isAfter(question.finding().since().minus(ABOUT)));
    }

    private static boolean persons(Place place) {
        return place.kind() == PlaceKind.CREW || place.kind() == PlaceKind.MISSING;
    }

    private static boolean field(Place place) {
        return place.kind() == PlaceKind.TREE || place.kind() == PlaceKind.BAG;
    }
}
