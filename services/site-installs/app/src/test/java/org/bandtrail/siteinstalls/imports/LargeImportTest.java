package org.bandtrail.siteinstalls.imports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.LengthUnit;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.Http;
import org.bandtrail.siteinstalls.OnPostgres;
import org.bandtrail.siteinstalls.girths.GirthBasis;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A large inventory goes in by pages; {@code -Dbandtrail.import-rows=200000} runs it at full size. */
@OnPostgres
class LargeImportTest {
    private static final PersonId LEAD = new PersonId("P-01");
    private static final int ROWS = Integer.getInteger("bandtrail.import-rows", 12_000);
    private final Http http;
    private final TreeImports imports;
    private final KeptPreviews kept;
    private final Work work;
    private final Projectors projectors;
    private final JdbcClient jdbc;

    @Autowired
    LargeImportTest(
            @LocalServerPort int port,
            TreeImports imports,
            KeptPreviews kept,
            Work work,
            Projectors projectors,
            JdbcClient jdbc) {
        this.http = new Http(port);
        this.imports = imports;
        this.kept = kept;
        this.work = work;
        this.projectors = projectors;
        this.jdbc = jdbc;
    }

    @Test
    void a_large_inventory_goes_in_by_pages_and_shows_how_far_it_is() throws InterruptedException {
        http.post(
                "/sites",
                "{\"commandId\":\"%s\",\"siteId\":\"BIG\",\"name\":\"Big wood\"}".formatted(Http.commandId()));
        StringBuilder file = new StringBuilder("Tag,Species,DBH\n");
        for (int row = 1; row <= ROWS; row++) {
            file.append(row).append(",AILAL,").append(16 + row % 60).append('\n');
        }
        byte[] bytes = file.toString().getBytes(StandardCharsets.UTF_8);
        Mapping mapping = new Mapping(
                new SiteId("BIG"),
                null,
                "Tag",
                "Species",
                "DBH",
                GirthBasis.DIAMETER,
                LengthUnit.CENTIMETRE,
                null,
                List.of());

        long start = System.nanoTime();
        assertThat(imports.preview(bytes, mapping, LEAD).ready()).hasSize(ROWS);
        long previewed = System.nanoTime();
        String importId = TreeImports.importId(bytes, mapping);
        KeptPreview begun = work.inOneTransaction(() -> imports.store(importId, false, LEAD));
        assertThat(begun.stored()).isNull();
        assertThatThrownBy(() -> work.inOneTransaction(() -> imports.store(importId, false, LEAD)))
                .isInstanceOf(ImportRefused.StoredBefore.class);
        for (int look = 0; look < 1_200 && kept.one(importId).orElseThrow().stored() == null; look++) {
            Thread.sleep(100);
        }
        long done = System.nanoTime();

        assertThat(kept.one(importId).orElseThrow().stored()).isEqualTo(ROWS);
        assertThat(kept.one(importId).orElseThrow().progress()).isEqualTo(new KeptPreview.Progress(ROWS, ROWS));
        assertThat(projectors.caughtUp(Duration.ofMinutes(3))).isTrue();
        assertThat(jdbc.sql("SELECT count(*) FROM tree WHERE site_id = 'BIG' AND girth_mm > 0")
                        .query(Long.class)
                        .single())
                .isEqualTo(ROWS);
        System.out.printf(
                "%d rows: looked through in %d ms, stored in %d ms%n",
                ROWS, (previewed - start) / 1_000_000, (done - previewed) / 1_000_000);
    }

    @Test
    void a_storing_that_fails_half_way_leaves_no_tree() {
        http.post(
                "/sites",
                "{\"commandId\":\"%s\",\"siteId\":\"HALF\",\"name\":\"Half wood\"}".formatted(Http.commandId()));
        byte[] bytes = "Tag,DBH\n1,30\n2,31\n".getBytes(StandardCharsets.UTF_8);
        Mapping mapping = new Mapping(
                new SiteId("HALF"),
                null,
                "Tag",
                null,
                "DBH",
                GirthBasis.DIAMETER,
                LengthUnit.CENTIMETRE,
                null,
                List.of());
        imports.preview(bytes, mapping, LEAD);
        String importId = TreeImports.importId(bytes, mapping);

        assertThatThrownBy(() -> work.inOneTransaction(() -> {
                    imports.store(importId, false, LEAD);
                    throw new IllegalStateException("the power fails");
                }))
                .hasMessage("the power fails");

        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        assertThat(jdbc.sql("SELECT count(*) FROM domain_event_entry WHERE aggregate_identifier LIKE 'tree/HALF-%'")
                        .query(Long.class)
                        .single())
                .isZero();
        assertThat(work.inOneTransaction(() -> imports.store(importId, false, LEAD))
                        .stored())
                .isEqualTo(2);
    }
}
