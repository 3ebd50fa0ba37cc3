package org.bandtrail.siteinstalls.workplans;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;

/** Words for tests about plans: two trees at one site, one crew, one depot. */
public final class PlanSamples {
    /** The plan. */
    public static final PlanId PLAN = new PlanId("2026-05-11-C-2");

    /** Who plans. */
    public static final PersonId LEAD = new PersonId("P-03");

    /** When. */
    public static final Occurred WHEN = Occurred.at(Instant.parse("2026-05-04T12:00:00Z"));

    private PlanSamples() {}

    /** A tree with tape, mesh and pins. */
    public static PlanTree tree(String id, long girth, int bands) {
        return new PlanTree(
                new TreeId(id),
                new SiteId("ALDER"),
                Length.ofMm(girth),
                bands,
                Length.ofMm(girth + 90),
                Length.ofMm(girth + 230),
                Pieces.of(9L * bands),
                Pieces.ZERO);
    }

    /** A plan of one day. */
    public static PlanContent content(PlanTree... trees) {
        LocalDate day = LocalDate.of(2026, 5, 11);
        return new PlanContent(
                day,
                day,
                new CrewId("C-2"),
                new DepotId("NORTH"),
                "LYCMDE",
                null,
                "sticky-band",
                new PlanMaterials(
                        new MaterialCode("TAPE-127"), new MaterialCode("MESH-12"), new MaterialCode("PIN-15"), null),
                1,
                null,
                null,
                List.of(trees),
                "");
    }

    /** Two trees, three bands. */
    public static PlanContent usual() {
        return content(tree("T-1", 1000, 1), tree("T-2", 1500, 2));
    }
}
