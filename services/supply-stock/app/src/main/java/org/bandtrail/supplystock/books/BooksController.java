package org.bandtrail.supplystock.books;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The books over HTTP. All parts of an answer are read from one snapshot, so that rows and totals agree. */
@RestController
@Tag(name = "books", description = "Trial of a month, the books at any past moment, and the lines behind each figure")
class BooksController {
    private static final int MOST = 1_000;
    private final Trials trials;
    private final PastBooks past;
    private final BookLines lines;
    private final Clock clock;

    BooksController(Trials trials, PastBooks past, BookLines lines, Clock clock) {
        this.trials = trials;
        this.past = past;
        this.lines = lines;
        this.clock = clock;
    }

    /** Rows of one page and the cursor of the next. */
    private record Cut<T>(List<T> rows, @Nullable String next) {
        static <T> Cut<T> of(List<T> oneMore, int most, Function<T, String> key) {
            return oneMore.size() > most
                    ? new Cut<>(oneMore.subList(0, most), key.apply(oneMore.get(most - 1)))
                    : new Cut<>(oneMore, null);
        }
    }

    @GetMapping("/trial")
    @Operation(summary = "Opening + in - out + adjusted = closing in quantity and value, per item and place")
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public Trial trial(
            @RequestParam @Nullable YearMonth period,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "200") int limit) {
        Instant now = clock.instant();
        String month = (period == null ? YearMonth.from(now.atOffset(ZoneOffset.UTC)) : period).toString();
        int most = Math.clamp(limit, 1, MOST);
        Cut<TrialRow> page = Cut.of(trials.rows(month, after, most + 1), most, TrialRow::key);
        return new Trial(month, page.rows(), page.next(), trials.totals(month), trials.law(month), now);
    }

    @GetMapping("/trial/recount")
    @Operation(summary = "Whether all months together give the running balances; rows only where they do not")
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public Recount recount() {
        return new Recount(trials.recount(), null, clock.instant());
    }

    @GetMapping("/as-of")
    @Operation(summary = "Every balance and cost at a past moment, as known then and as known now")
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public AsOf asOf(
            @RequestParam @Nullable Instant at,
            @RequestParam @Nullable Instant knownAt,
            @RequestParam(defaultValue = "place") String by,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "200") int limit) {
        AsOfBy along = AsOfBy.of(by);
        Instant moment = at == null ? clock.instant() : at;
        Instant known = knownAt == null ? moment : knownAt;
        int most = Math.clamp(limit, 1, MOST);
        List<AsOf.Row> rows = along == AsOfBy.HOLDING
                ? past.holdings(moment, known, after, most + 1)
                : past.rows(along, moment, known, after, most + 1);
        Cut<AsOf.Row> page = Cut.of(rows, most, AsOf.Row::key);
        AsOfBy whole = along == AsOfBy.HOLDING ? AsOfBy.PLACE : along;
        return new AsOf(
                along.name().toLowerCase(Locale.ROOT),
                moment,
                known,
                page.rows(),
                page.next(),
                past.totals(whole, moment, known));
    }

    @GetMapping("/ledger")
    @Operation(summary = "Lines of the ledger, of a month, item, place, account, reel or batch")
    public Lines ledger(
            @RequestParam(defaultValue = "") String period,
            @RequestParam(defaultValue = "") String item,
            @RequestParam(defaultValue = "") String place,
            @RequestParam(defaultValue = "") String account,
            @RequestParam(defaultValue = "") String holding,
            @RequestParam(defaultValue = "") String id,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "200") int limit) {
        int most = Math.clamp(limit, 1, MOST);
        BookLines.Wanted wanted = new BookLines.Wanted(period, item, place, account, holding, id);
        Cut<LineRow> page = Cut.of(lines.page(wanted, after, most + 1), most, LineRow::line);
        return new Lines(page.rows(), page.next());
    }

    record Lines(List<LineRow> rows, @Nullable String next) {}

    record Recount(List<Trials.Differing> rows, @Nullable String next, Instant readAt) {}
}
