package org.bandtrail.inspections.catchrates;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.inspections.catchrates.CatchRate.Reading;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Catch rates over HTTP. */
@RestController
@Tag(name = "catch rates", description = "Insects per band-day with an exact interval")
final class CatchRateController {
    private static final double MILLI = 1_000;
    private final CatchReadings readings;

    CatchRateController(CatchReadings readings) {
        this.readings = readings;
    }

    /**
     * A rate; all null where no band was read.
     *
     * @param visitsRead visits that count
     * @param visitsLeftOut visits that read no band or whose days are not known
     * @param insects counted
     * @param bandHours exposure, whole hours, rounded
     * @param perBandDayMilli thousandths of an insect per band and day, rounded
     * @param lowMilli lower end of the 95 percent interval, likewise
     * @param highMilli upper end, likewise
     * @param lowerBound true if a counted band was full, then the true rate is at least this
     */
    record RateAnswer(
            long visitsRead,
            long visitsLeftOut,
            @Nullable Long insects,
            @Nullable Long bandHours,
            @Nullable Long perBandDayMilli,
            @Nullable Long lowMilli,
            @Nullable Long highMilli,
            boolean lowerBound,
            String formula,
            String source) {}

    @GetMapping("/catch-rates")
    @Operation(
            summary = "Insects per band-day over a time",
            description = "Sum of catches over sum of band-days of the bands that were read, with Garwood's exact 95"
                    + " percent interval. Not read, not found and missing are left out on both sides.")
    RateAnswer rate(
            @RequestParam(required = false) @Nullable String site,
            @RequestParam LocalDate from,
            @RequestParam LocalDate to) {
        List<Reading> visits = readings.between(
                site,
                from.atStartOfDay(ZoneOffset.UTC).toInstant(),
                to.plusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant());
        long read = visits.stream().filter(Reading::read).count();
        CatchRate rate = read == 0 ? null : CatchRate.of(visits);
        return new RateAnswer(
                read,
                visits.size() - read,
                rate == null ? null : rate.insects(),
                rate == null ? null : Math.round(rate.bandDays() * 24),
                rate == null ? null : Math.round(rate.perBandDay() * MILLI),
                rate == null ? null : Math.round(rate.low() * MILLI),
                rate == null ? null : Math.round(rate.high() * MILLI),
                rate != null && rate.lowerBound(),
                "sum of insects / sum of band-days; interval chi2(.025, 2x)/2 to chi2(.975, 2x + 2)/2",
                "FAO/IAEA trapping guidelines 2003 (flies per trap per day); Garwood 1936");
    }
}
