package org.bandtrail.siteinstalls.policies;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.siteinstalls.girths.GirthLimits;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** All published versions of the cut-length policy. */
@Repository
public class CutPolicies {
    private static final Duration PATIENCE = Duration.ofSeconds(5);
    private final JdbcClient jdbc;
    private final ObjectProvider<Projectors> projectors;

    CutPolicies(JdbcClient jdbc, ObjectProvider<Projectors> projectors) {
        this.jdbc = jdbc;
        this.projectors = projectors;
    }

    /** All versions, the newest first. */
    List<CutPolicyView> all() {
        return jdbc.sql("SELECT * FROM cut_policy ORDER BY version DESC")
                .query((row, number) -> new CutPolicyView(
                        version(row),
                        row.getString("published_by"),
                        row.getObject("published_at", OffsetDateTime.class).toInstant()))
                .list();
    }

    /**
     * The version in force on a day, as {@link CutPolicy#on} chooses it; on days before all versions the one that holds
     * first, because a device with a wrong clock still needs a length.
     *
     * @throws IllegalStateException if there is no version at all, which the start of the service prevents
     */
    public CutPolicyVersion on(LocalDate day) {
        return on(day, null, null);
    }

    /**
     * The version in force on a day for a pest in a programme, as {@link CutPolicy#on(LocalDate, PolicyScope)} chooses
     * it: for both, else for the pest, else of the house.
     *
     * @param programme code of the programme, null for none
     * @param pest EPPO code, null for none
     * @throws IllegalStateException if there is no version at all, which the start of the service prevents
     */
    public CutPolicyVersion on(LocalDate day, @Nullable String programme, @Nullable String pest) {
        PolicyScope wanted = new PolicyScope(programme, pest);
        List<CutPolicyVersion> versions = versions();
        if (versions.isEmpty() && projectors.getObject().caughtUp(PATIENCE)) {
            versions = versions();
        }
        List<CutPolicyVersion> known = versions;
        Optional<CutPolicyVersion> inForce = new CutPolicy(known).on(day, wanted);
        return inForce.or(() -> new CutPolicy(known).first())
                .orElseThrow(() -> new IllegalStateException("There is no cut-length policy yet."));
    }

    /** All versions in the order of publishing. */
    public List<CutPolicyVersion> versions() {
        return jdbc.sql("SELECT * FROM cut_policy ORDER BY version")
                .query((row, number) -> version(row))
                .list();
    }

    private static CutPolicyVersion version(ResultSet row) throws SQLException {
        return new CutPolicyVersion(
                row.getInt("version"),
                new PolicyScope(row.getString("programme"), row.getString("pest")),
                row.getObject("valid_from", LocalDate.class),
                row.getObject("valid_until", LocalDate.class),
                values(row),
                row.getString("source"),
                row.getString("reason"));
    }

    private static CutLengths values(ResultSet row) throws SQLException {
        return new CutLengths(
                new CutLengths.TapeRule(mm(row, "tape_overlap_mm"), mm(row, "tape_tab_mm"), mm(row, "tape_widest_mm")),
                new CutLengths.MeshRule(
                        mm(row, "mesh_extra_mm"),
                        mm(row, "mesh_least_stand_off_mm"),
                        mm(row, "mesh_widest_opening_mm")),
                new CutLengths.FastenerRule(mm(row, "fastener_spacing_mm"), Pieces.of(row.getLong("fastener_minimum"))),
                new CutLengths.HeightRule(
                        mm(row, "height_usual_mm"), mm(row, "height_lowest_mm"), mm(row, "height_highest_mm")),
                new GirthLimits(
                        mm(row, "girth_minimum_mm"),
                        mm(row, "girth_question_above_mm"),
                        row.getInt("girth_change_permille")),
                new CutLengths.SetupRule(
                        row.getInt("bands_per_tree"),
                        mm(row, "band_width_mm"),
                        CutLengths.GuardType.of(row.getString("guard_type")),
                        mm(row, "guard_wider_mm"),
                        mm(row, "guard_seam_mm"),
                        row.getBoolean("guard_closed_below")),
                row.getInt("remove_after_days"),
                row.getInt("late_after_days"));
    }

    private static Length mm(ResultSet row, String column) throws SQLException {
        return Length.ofMm(row.getLong(column));
    }
}
