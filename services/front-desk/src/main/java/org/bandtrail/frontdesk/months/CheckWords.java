package org.bandtrail.frontdesk.months;

import java.util.Map;
import org.bandtrail.frontdesk.neighbours.money.Months;
import org.jspecify.annotations.Nullable;

/**
 * A check of a close in words, with the page where it is settled.
 *
 * @param title what is looked at
 * @param link where to settle what is open, null if nobody can but time
 */
public record CheckWords(String title, @Nullable String link, Months.Check check) {
    private static final Map<String, String[]> WORDS = Map.of(
            "books-up-to-date", new String[] {"The books have read everything"},
            "open-discrepancies", new String[] {"Books and field agree", "/audit"},
            "invoices-waiting", new String[] {"Every invoice has its match", "/invoices"},
            "unsettled-kits", new String[] {"Every kit has come back", "/handouts"},
            "unread-feeds", new String[] {"Everything from the field has been heard"},
            "audit", new String[] {"The audit reads zero", "/audit"},
            "trial", new String[] {"What was there, came and went is what is there", "/trial"});

    static CheckWords of(Months.Check check) {
        String[] words =
                WORDS.getOrDefault(check.check(), new String[] {check.check().replace('-', ' ')});
        return new CheckWords(words[0], words.length < 2 ? null : words[1], check);
    }
}
