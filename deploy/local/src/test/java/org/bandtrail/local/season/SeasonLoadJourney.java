package org.bandtrail.local.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.bandtrail.local.House;
import org.bandtrail.local.LauncherOptions;
import org.bandtrail.local.Service;
import org.bandtrail.local.doors.Doors;
import org.bandtrail.local.doors.FrontDoor;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The demo season, loaded into a real house: the books say what the files say, and nothing is done twice. */
class SeasonLoadJourney {
    private static final Path DEMO_DATA = Path.of("../../demo-data");
    private static final Path SEASON = DEMO_DATA.resolve("season");

    @TempDir
    private static Path folder;

    private static House house;
    private static FrontDoor supplyStock;
    private static String sentence;

    @BeforeAll
    static void load() {
        LauncherOptions options = LauncherOptions.parse(
                folder, "--empty", "--data", folder.resolve("data").toString(), "--ports", "0,0,0,0");
        house = House.start(options, said -> {});
        supplyStock = doors().supplyStock();
        sentence = season().load((what, done, total) -> {}, house.clock()::set);
    }

    @AfterAll
    static void close() {
        house.close();
    }

    private static Doors doors() {
        return Doors.at(
                house.at(Service.SUPPLY_STOCK),
                house.at(Service.SITE_INSTALLS),
                house.at(Service.INSPECTIONS),
                house.at(Service.FRONT_DESK),
                house.serviceKey());
    }

    private static DemoSeason season() {
        return new DemoSeason(
                DEMO_DATA,
                house.at(Service.SUPPLY_STOCK),
                house.at(Service.SITE_INSTALLS),
                house.at(Service.INSPECTIONS),
                house.at(Service.FRONT_DESK),
                house.serviceKey());
    }

    private static JsonNode read(FrontDoor door, String path) {
        return door.get(path, "P-18", path);
    }

    @Test
    void the_audit_reads_zero() {
        assertThat(sentence).startsWith("The audit reads zero: ");
        assertThat(read(supplyStock, "/audit").path("zero").asBoolean()).isTrue();
    }

    @Test
    void what_hangs_and_what_was_bagged_is_what_the_files_add_up_to() throws IOException {
        JsonNode trail = read(supplyStock, "/trail");
        for (String material : new String[] {"tape", "mesh"}) {
            FieldTally files = FieldTally.of(material, SEASON);
            JsonNode books = trail.path(material);
            JsonNode unknown = trail.path("unknown");
            long ofUnknownReel = material.equals("tape") ? bagged(unknown) : 0;

            assertThat(books.path("tree").asLong()).as(material).isEqualTo(files.onTreesMm());
            assertThat(bagged(books) + ofUnknownReel).as(material).isEqualTo(files.baggedMm());
        }
    }

    private static long bagged(JsonNode row) {
        return row.path("bag").asLong() + row.path("disposed").asLong();
    }

    @Test
    void the_findings_are_the_seasons_mistakes_with_a_name_and_a_date() {
        JsonNode findings = read(supplyStock, "/audit").path("findings");

        assertThat(findings).isNotEmpty().allSatisfy(finding -> {
            assertThat(finding.path("personId").asString("")).startsWith("P-");
            assertThat(finding.path("since").asString("")).startsWith("2026-");
        });
        assertThat(findings)
                .anySatisfy(
                        finding -> assertThat(finding.path("id").asString("")).isEqualTo("R-0990"))
                .anySatisfy(finding -> {
                    assertThat(finding.path("personId").asString("")).isEqualTo("P-11");
                    assertThat(finding.path("quantity").asLong()).isGreaterThan(8_000);
                });
    }

    @Test
    void facts_of_the_day_are_not_late_and_those_of_the_broken_telephone_are() throws IOException {
        Row silent = CsvRows.read(SEASON.resolve("fits.csv")).stream()
                .filter(row -> row.has("sentAt"))
                .findFirst()
                .orElseThrow();

        assertThat(band("B-0001")).doesNotContain("recorded-late");
        assertThat(band(silent.text("bandId"))).contains("recorded-late");
    }

    private static String band(String bandId) {
        return read(doors().siteInstalls(), "/bands/" + bandId).toString();
    }

    @Test
    void loading_again_changes_nothing() {
        String before = read(supplyStock, "/trail").toString();
        long head = supplyStock.feedHead("P-18");
        season().load((what, done, total) -> {}, house.clock()::set);

        assertThat(read(supplyStock, "/trail").toString()).isEqualTo(before);
        assertThat(supplyStock.feedHead("P-18")).isEqualTo(head);
    }
}
