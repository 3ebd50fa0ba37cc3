package org.bandtrail.siteinstalls.exports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class TreeFormatTest {
    private static String written(TreeFormat format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        format.write(TreeSamples.awkward().iterator(), out);
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void csv_has_the_open_field_names_and_quotes_where_needed() throws IOException {
        // 1251 mm / pi = 398.2 mm
        assertThat(written(TreeFormat.CSV))
                .startsWith("ref,site,lat,lon,genus,species,eppo_code,girth_mm,dbh_cm,girth_height_mm,updated,location")
                .contains("017,ALDER,40.4417301,-75.3400000,Ailanthus,Ailanthus altissima,AILAL,1251,39.8,1370,")
                .contains("\"A, B\"");
    }

    /** RFC 7946, 3.1.1: longitude first; 3.2: a feature without a place has a null geometry; 4: no crs. */
    @Test
    void geojson_has_longitude_first_and_null_for_no_place() throws IOException {
        String text = written(TreeFormat.GEOJSON);
        JsonNode collection = JsonMapper.builder().build().readTree(text);
        assertThat(text).contains("\"coordinates\":[-75.3400000,40.4417301]").doesNotContain("crs");
        assertThat(collection.path("type").asString()).isEqualTo("FeatureCollection");
        assertThat(collection.path("features")).hasSize(3);
        assertThat(collection.path("features").path(2).path("geometry").isNull())
                .isTrue();
    }
}
