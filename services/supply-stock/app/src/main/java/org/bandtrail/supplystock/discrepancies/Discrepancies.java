package org.bandtrail.supplystock.discrepancies;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.supplystock.causes.Case;
import org.bandtrail.supplystock.causes.Cause;
import org.bandtrail.supplystock.causes.CauseFinder;
import org.bandtrail.supplystock.causes.CausePolicy;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The list of open questions, each with worth, age and likely causes. */
@Repository
class Discrepancies {
    private final JdbcClient jdbc;
    private final Findings findings;
    private final Cases cases;
    private final CauseFinder finder = new CauseFinder(CausePolicy.USUAL);

    Discrepancies(JdbcClient jdbc, Findings findings, Cases cases) {
        this.jdbc = jdbc;
        this.findings = findings;
        this.cases = cases;
    }

    /**
     * One page, the oldest first. Causes are looked for on this page only.
     *
     * @param now what age and waiting are reckoned from
     * @param waiting whether questions that wait are listed too
     * @param after key after which the page begins, or null
     */
    Page page(Instant now, boolean waiting, @Nullable String after, int limit) {
        Map<String, Until> waits = waits(LocalDate.ofInstant(now, ZoneOffset.UTC));
        List<OpenQuestion> found = findings.open().stream()
                .filter(question -> waiting || until(question, waits) == null)
                .filter(question -> after == null || question.key().compareTo(after) > 0)
                .sorted(java.util.Comparator.comparing(OpenQuestion::key))
                .limit(limit)
                .toList();
        Map<OpenQuestion, Case> explained = found.isEmpty() ? Map.of() : cases.of(found);
        List<Discrepancy> rows = found.stream()
                .map(question -> row(question, explained.get(question), until(question, waits), now))
                .toList();
        return new Page(rows, found.size() < limit ? null : found.getLast().key());
    }

    private Discrepancy row(OpenQuestion question, @Nullable Case open, @Nullable Until until, Instant now) {
        Finding finding = question.finding();
        return new Discrepancy(
                finding.what(),
                finding.material(),
                finding.id(),
                finding.place(),
                finding.personId(),
                finding.quantity(),
                finding.unit(),
                question.worth(),
                finding.since(),
                Math.max(0, Duration.between(finding.since(), now).toDays()),
                question.lastHolder(),
                finding.sentence(),
                open == null
                        ? List.of()
                        : finder.likely(open).stream()
                                .map(Discrepancies::likely)
                                .toList(),
                until == null ? null : until.until(),
                until == null ? null : until.reason());
    }

    private static Discrepancy.Likely likely(Cause cause) {
        return new Discrepancy.Likely(
                cause.kind().name(),
                cause.kind().words(),
                cause.weight(),
                cause.evidence(),
                cause.other(),
                cause.through() == null ? null : cause.through().toString(),
                cause.quantity());
    }

    /** A question waits while its amount is the one it was set to wait with. */
    private static @Nullable Until until(OpenQuestion question, Map<String, Until> waits) {
        Until until = waits.get(Waiting.question(
                question.finding().material(), question.finding().id(), question.place()));
        return until != null && until.quantity() == question.finding().quantity() ? until : null;
    }

    private Map<String, Until> waits(LocalDate today) {
        Map<String, Until> waits = new HashMap<>();
        jdbc.sql("SELECT material, id, place, quantity, until, reason FROM waiting_question WHERE until > ?")
                .param(today)
                .query(row -> {
                    waits.put(
                            row.getString("material") + " " + row.getString("id") + " " + row.getString("place"),
                            new Until(
                                    row.getLong("quantity"),
                                    row.getObject("until", LocalDate.class),
                                    row.getString("reason")));
                });
        return waits;
    }

    private record Until(long quantity, LocalDate until, String reason) {}

    record Page(List<Discrepancy> rows, @Nullable String next) {}
}
