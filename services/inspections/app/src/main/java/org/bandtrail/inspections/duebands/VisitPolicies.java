package org.bandtrail.inspections.duebands;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import org.bandtrail.inspections.bands.Judging;
import org.bandtrail.kernel.PersonId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** All versions of the visit policy. A version is never changed; a newer one follows it. */
@Repository
public class VisitPolicies {
    private final JdbcClient jdbc;

    VisitPolicies(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Chooses the version by the time of a fact. */
    public record Judge(List<VisitPolicy> versions) {

        /** What of the policy in force at this moment a decision about a band needs. */
        public Judging at(Instant moment) {
            VisitPolicy policy = inForce(moment);
            return new Judging(policy.version(), policy.fullFromPercent(), policy.lateAfterHours());
        }

        /** The newest version that was in force at this moment; the first one for times before all of them. */
        public VisitPolicy inForce(Instant moment) {
            LocalDate day = moment.atZone(ZoneOffset.UTC).toLocalDate();
            return versions.stream()
                    .filter(policy -> !policy.validFrom().isAfter(day))
                    .max(Comparator.comparing(VisitPolicy::validFrom).thenComparing(VisitPolicy::version))
                    .orElseGet(versions::getFirst);
        }
    }

    /** All versions, oldest first. */
    public List<VisitPolicy> all() {
        return jdbc.sql("SELECT * FROM visit_policy ORDER BY version")
                .query((row, number) -> new VisitPolicy(
                        row.getInt("version"),
                        row.getObject("valid_from", LocalDate.class),
                        row.getInt("interval_days"),
                        row.getInt("load_from_percent"),
                        row.getInt("load_interval_days"),
                        row.getInt("full_from_percent"),
                        row.getInt("guard_interval_days"),
                        row.getInt("retry_interval_days"),
                        row.getInt("max_days_up"),
                        row.getInt("late_after_hours"),
                        row.getString("source"),
                        row.getString("reason")))
                .list();
    }

    /** All versions, to choose from. */
    public Judge judge() {
        return new Judge(all());
    }

    /** The number the next version will have. */
    int nextVersion() {
        return jdbc.sql("SELECT max(version) + 1 FROM visit_policy")
                .query(Integer.class)
                .single();
    }

    void add(VisitPolicy policy, PersonId by, Instant recorded) {
        jdbc.sql("""
                        INSERT INTO visit_policy (version, valid_from, interval_days, load_from_percent,
                            load_interval_days, full_from_percent, guard_interval_days, retry_interval_days,
                            max_days_up, late_after_hours, source, reason, adopted_by, recorded_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""")
                .params(
                        policy.version(),
                        policy.validFrom(),
                        policy.intervalDays(),
                        policy.loadFromPercent(),
                        policy.loadIntervalDays(),
                        policy.fullFromPercent(),
                        policy.guardIntervalDays(),
                        policy.retryIntervalDays(),
                        policy.maxDaysUp(),
                        policy.lateAfterHours(),
                        policy.source(),
                        policy.reason(),
                        by.value(),
                        OffsetDateTime.ofInstant(recorded, ZoneOffset.UTC))
                .update();
    }
}
