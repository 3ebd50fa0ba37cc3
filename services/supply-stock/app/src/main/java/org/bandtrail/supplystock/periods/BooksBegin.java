package org.bandtrail.supplystock.periods;

import java.time.YearMonth;
import org.jspecify.annotations.Nullable;

/** Knows the first month with an entry; whoever keeps the entries declares one bean of this type. */
public interface BooksBegin {
    /** The first month with an entry, null while the books are empty. */
    @Nullable
    YearMonth month();
}
