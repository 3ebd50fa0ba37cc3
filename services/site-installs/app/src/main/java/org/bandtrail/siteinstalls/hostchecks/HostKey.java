package org.bandtrail.siteinstalls.hostchecks;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.bandtrail.siteinstalls.species.EppoCode;

/**
 * A short guided key to the hosts of one pest.
 *
 * @param pest code of the EPPO list
 * @param version counted up with every edition
 * @param validFrom since when it holds
 * @param source where its signs are from
 * @param reason why it asks what it asks
 * @param hosts the kinds that make the verdict HOST
 * @param candidates all kinds it tells apart
 * @param enoughPercent the least confidence of a verdict that is not UNSURE
 * @param mostPercent no verdict of a key is surer than this
 * @param questions in the order they are asked
 */
public record HostKey(
        EppoCode pest,
        int version,
        LocalDate validFrom,
        String source,
        String reason,
        List<EppoCode> hosts,
        List<EppoCode> candidates,
        int enoughPercent,
        int mostPercent,
        List<HostQuestion> questions) {
    /** Keeps its own copies. */
    public HostKey {
        hosts = List.copyOf(hosts);
        candidates = List.copyOf(candidates);
        questions = List.copyOf(questions);
    }

    /**
     * The next question, empty when all are answered or one answer ruled out every kind of the key.
     *
     * @throws IllegalArgumentException if an answer is none of the key
     */
    public Optional<HostQuestion> next(List<HostAnswer> answers) {
        check(answers);
        if (ruledOut(answers).isPresent()) {
            return Optional.empty();
        }
        return questions.stream()
                .filter(question ->
                        answers.stream().noneMatch(answer -> answer.question().equals(question.id())))
                .findFirst();
    }

    /**
     * The verdict. Each answer adds the weight of its question to the score of every kind it fits and takes it from the
     * score of every kind it speaks against. The best kind's confidence is
     *
     * <pre>(best score - second best score, at least 0) / sum of the weights of all questions</pre>
     *
     * <p>in per cent, rounded down, from 0 to {@code mostPercent}. "Not sure" and a question that was never reached add
     * nothing and so lower it. Below {@code enoughPercent}, or when two kinds share the best score, the outcome is
     * UNSURE. An answer that rules out every kind gives NOT_HOST with the confidence written beside it. A rule of the
     * house, no source: it orders trees by how well they were looked at and is no probability.
     *
     * @throws IllegalArgumentException if an answer is none of the key
     */
    public HostVerdict verdict(List<HostAnswer> answers) {
        check(answers);
        OptionalInt ruledOut = ruledOut(answers);
        if (ruledOut.isPresent()) {
            return new HostVerdict(HostVerdict.Outcome.NOT_HOST, null, Math.min(ruledOut.getAsInt(), mostPercent));
        }
        Map<EppoCode, Integer> scores = scores(answers);
        List<EppoCode> ranked = candidates.stream()
                .sorted(Comparator.comparing((EppoCode kind) -> -scores.getOrDefault(kind, 0)))
                .toList();
        int best = scores.getOrDefault(ranked.getFirst(), 0);
        int second = ranked.size() < 2 ? 0 : Math.max(0, scores.getOrDefault(ranked.get(1), 0));
        int all = questions.stream().mapToInt(HostQuestion::weight).sum();
        int confidence = Math.clamp(100L * (best - second) / all, 0, mostPercent);
        if (confidence == 0) {
            return new HostVerdict(HostVerdict.Outcome.UNSURE, null, 0);
        }
        EppoCode kind = ranked.getFirst();
        if (confidence < enoughPercent) {
            return new HostVerdict(HostVerdict.Outcome.UNSURE, kind, confidence);
        }
        return new HostVerdict(
                hosts.contains(kind) ? HostVerdict.Outcome.HOST : HostVerdict.Outcome.NOT_HOST, kind, confidence);
    }

    private Map<EppoCode, Integer> scores(List<HostAnswer> answers) {
        Map<EppoCode, Integer> scores = new HashMap<>();
        for (HostAnswer answer : answers) {
            HostQuestion question = question(answer);
            question.choice(answer.answer()).ifPresent(choice -> {
                choice.fits().forEach(kind -> scores.merge(kind, question.weight(), Integer::sum));
                choice.against().forEach(kind -> scores.merge(kind, -question.weight(), Integer::sum));
            });
        }
        return scores;
    }

    private OptionalInt ruledOut(List<HostAnswer> answers) {
        return answers.stream()
                .flatMap(answer -> question(answer).choice(answer.answer()).stream())
                .flatMapToInt(choice -> choice.rulesOutAllPercent() == null
                        ? IntStream.empty()
                        : IntStream.of(choice.rulesOutAllPercent()))
                .max();
    }

    private void check(List<HostAnswer> answers) {
        for (HostAnswer answer : answers) {
            boolean known = question(answer).choice(answer.answer()).isPresent()
                    || answer.answer().equals(HostQuestion.NOT_SURE);
            if (!known) {
                throw new IllegalArgumentException("[%s] is no answer to question [%s] of the key for %s."
                        .formatted(answer.answer(), answer.question(), pest));
            }
        }
        if (answers.stream().map(HostAnswer::question).distinct().count() < answers.size()) {
            throw new IllegalArgumentException(
                    "A question of the key for %s is answered twice. Send one answer each.".formatted(pest));
        }
    }

    private HostQuestion question(HostAnswer answer) {
        return questions.stream()
                .filter(each -> each.id().equals(answer.question()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "[%s] is no question of the key for %s.".formatted(answer.question(), pest)));
    }
}
