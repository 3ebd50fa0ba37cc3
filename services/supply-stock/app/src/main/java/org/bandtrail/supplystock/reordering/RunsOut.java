package org.bandtrail.supplystock.reordering;

import java.time.LocalDate;
import java.util.Optional;
import org.hipparchus.distribution.continuous.TDistribution;
import org.jspecify.annotations.Nullable;

/**
 * On which day the stock no longer covers the day's use, with an interval.
 *
 * <pre>
 * expected      t = s / m
 * interval      the t at which  s - m t = -+ q sd sqrt(t + t^2 / n)
 * </pre>
 *
 * s is the stock, m and sd the mean and standard deviation of a day's use over n days observed, q Student's quantile
 * with n - 1 degrees of freedom. sqrt(t + t^2/n) carries both the chance of the days to come and the uncertainty of the
 * mean itself. If the mean is too uncertain (m &lt;= q sd / sqrt(n)) no end can be promised: {@code latest} is then
 * null, as in E. C. Fieller, J. R. Stat. Soc. B 16 (1954) 175-185. Source of the prediction error: G. J. Hahn and W. Q.
 * Meeker, Statistical Intervals, chapter 4 (citations from memory; coverage is tested by simulation). Valid if the use
 * goes on as observed: days independent, no season's end before the date. Rounded down to whole days: rather too early.
 *
 * @param expected first day not fully covered, at the mean use
 * @param earliest the same day if much is used: it is this day or later with probability (1 + level) / 2
 * @param latest the same day if little is used, or null if it cannot be bounded or lies beyond {@link #HORIZON_DAYS}
 */
public record RunsOut(
        LocalDate expected, LocalDate earliest, @Nullable LocalDate latest) {

    /** Ten years: beyond, a date would only pretend. */
    public static final int HORIZON_DAYS = 3_650;

    /**
     * The date for a stock.
     *
     * @param onHand mm or pieces; nothing or a deficit has run out already
     * @param use what was used per day
     * @param from the day whose use is still to come
     * @param levelPermille probability of the interval, 500 to 990
     * @return empty if nothing is used, or the expected date lies beyond {@link #HORIZON_DAYS}
     */
    public static Optional<RunsOut> on(long onHand, DailyUse.Measured use, LocalDate from, int levelPermille) {
        InRange.checked("Level of the interval (permille)", levelPermille, 500, 990);
        double stock = Math.max(0, onHand);
        double mean = use.perDay().mean();
        if (mean == 0 || stock / mean > HORIZON_DAYS) {
            return Optional.empty();
        }
        double upper = 0.5 + levelPermille / 2000.0;
        double q = new TDistribution(use.daysObserved() - 1.0).inverseCumulativeProbability(upper);
        // Squared, the interval's ends are the roots of a t^2 - b t + s^2 = 0.
        double spread = q * use.perDay().sd();
        double a = mean * mean - spread * spread / use.daysObserved();
        double b = 2 * stock * mean + spread * spread;
        double root = Math.sqrt(Math.max(0, b * b - 4 * a * stock * stock));
        double early = stock == 0 ? 0 : 2 * stock * stock / (b + root);
        double late = a > 0 ? (b + root) / (2 * a) : Double.POSITIVE_INFINITY;
        return Optional.of(new RunsOut(
                from.plusDays(wholeDays(stock / mean)),
                from.plusDays(wholeDays(early)),
                late > HORIZON_DAYS ? null : from.plusDays(wholeDays(late))));
    }

    /** Full days covered; a billionth of a day is noise of the division. */
    private static long wholeDays(double days) {
        return (long) Math.floor(days + 1e-9);
    }
}
