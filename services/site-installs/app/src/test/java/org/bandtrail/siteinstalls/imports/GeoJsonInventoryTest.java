package org.bandtrail.siteinstalls.imports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class GeoJsonInventoryTest {
    private static InventoryFile open(String text) {
        return InventoryFile.open(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<InventoryFile.Row> rows(InventoryFile file) {
        List<InventoryFile.Row> rows = new ArrayList<>();
        while (file.more()) {
            rows.add(file.next());
        }
        return rows;
    }

    @Test
    void the_properties_of_all_features_are_the_columns_and_the_point_is_lat_and_lon() {
        InventoryFile file = open("""
                {"type":"FeatureCollection","name":"trees","features":[
                 {"type":"Feature","geometry":{"type":"Point","coordinates":[-75.34,40.44,120.5]},
                  "properties":{"ref":"17","dbh":39.5}},
                 {"type":"Feature","geometry":null,"properties":{"ref":18,"species":"oak"}}]}""");
        assertThat(file.columns()).containsExactly("lat", "lon", "ref", "dbh", "species");
        assertThat(rows(file))
                .containsExactly(
                        new InventoryFile.Row(2, List.of("40.44", "-75.34", "17", "39.5", "")),
                        new InventoryFile.Row(3, List.of("", "", "18", "", "oak")));
        assertThat(file.notes()).singleElement().asString().startsWith("1 features are no points");
    }

    @Test
    void another_system_of_coordinates_is_refused_by_name() {
        assertThatThrownBy(() -> open("""
                {"type":"FeatureCollection","crs":{"type":"name","properties":{"name":"EPSG:3857"}},"features":[]}"""))
                .isInstanceOf(ImportRefused.FileUnreadable.class)
                .hasMessageContaining("[EPSG:3857]");
    }

    @Test
    void broken_json_and_other_objects_are_refused() {
        assertThatThrownBy(() -> open("{\"type\":\"FeatureCollection\",\"features\":[{\"type\""))
                .isInstanceOf(ImportRefused.FileUnreadable.class)
                .hasMessageContaining("row 2");
        assertThatThrownBy(() -> open("{\"trees\":[]}")).hasMessageContaining("no GeoJSON FeatureCollection");
    }
}
