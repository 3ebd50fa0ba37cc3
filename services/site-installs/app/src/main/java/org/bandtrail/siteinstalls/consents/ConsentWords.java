package org.bandtrail.siteinstalls.consents;

import java.time.LocalDate;

/** A consent in a few words, for sentences. */
final class ConsentWords {
    private ConsentWords() {}

    /** For example {@code bands and guards, ended on 2026-06-30}. */
    static String of(ConsentView consent, LocalDate day) {
        return "%s, %s".formatted(consent.scope().words(), standing(consent, day));
    }

    private static String standing(ConsentView consent, LocalDate day) {
        LocalDate from = consent.validFrom();
        LocalDate until = consent.validUntil();
        LocalDate withdrawn = consent.withdrawnFrom();
        if (withdrawn != null) {
            return "withdrawn from %s".formatted(withdrawn);
        }
        if (from == null) {
            return consent.state();
        }
        if (from.isAfter(day)) {
            return "starts on %s".formatted(from);
        }
        if (until == null) {
            return "holds since %s".formatted(from);
        }
        return "%s on %s".formatted(until.isBefore(day) ? "ended" : "ends", until);
    }
}
