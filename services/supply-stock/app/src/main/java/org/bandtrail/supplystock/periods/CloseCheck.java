package org.bandtrail.supplystock.periods;

import java.time.YearMonth;

/** One thing to look at before a month is closed. Whoever knows about it declares a bean of this type. */
public interface CloseCheck {
    /** Its name for ever, in small letters with dashes, for example {@code open-discrepancies}. */
    String name();

    /** Where it stands among the checks, the lowest first. */
    int order();

    /** What it finds now, for the close of this month. */
    CheckFound look(YearMonth month);
}
