package org.bandtrail.siteinstalls.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.exports.TreeFormat;
import org.bandtrail.siteinstalls.exports.TreeSamples;
import org.bandtrail.siteinstalls.policies.PolicySamples;
import org.bandtrail.siteinstalls.sites.Point;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.json.JsonMapper;

/** What is exported, imported by the mapping that is proposed for it, is the same. */
class RoundTripTest {
    private static final Register EMPTY_WITH_SITES = new Register() {
        @Override
        public boolean hasSite(SiteId siteId) {
            return true;
        }

        @Override
        public Set<TreeId> taken(Collection<TreeId> trees) {
            return Set.of();
        }
    };

    private static List<String> lines(Preview preview) {
        return preview.ready().stream()
                .map(tree -> "%s|%s|%s|%s|%s|%s|%s|%s|%s"
                        .formatted(
                                tree.siteId(),
                                tree.tag(),
                                tree.species(),
                                tree.more().speciesCode(),
                                place(tree.more().position()),
                                tree.girth().girth().mm(),
                                KeptRows.height(tree.more()),
                                tree.measured(),
                                tree.more().note()))
                .toList();
    }

    private static String place(@Nullable Point point) {
        return point == null
                ? "null null"
                : Point.degrees(point.latitudeE7()).toPlainString() + " "
                        + Point.degrees(point.longitudeE7()).toPlainString();
    }

    private static List<String> exported() {
        return TreeSamples.awkward().stream()
                .map(tree -> "%s|%s|%s|%s|%s|%s|%s|%s|%s"
                        .formatted(
                                tree.siteId(),
                                tree.tag(),
                                tree.species(),
                                tree.speciesCode(),
                                tree.lat() == null || tree.lon() == null
                                        ? "null null"
                                        : tree.lat().toPlainString() + " "
                                                + tree.lon().toPlainString(),
                                tree.girthMm(),
                                tree.girthHeightMm(),
                                "2026-03-10",
                                tree.note()))
                .toList();
    }

    @ParameterizedTest
    @EnumSource(TreeFormat.class)
    void an_exported_register_is_imported_without_a_difference(TreeFormat format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        format.write(TreeSamples.awkward().iterator(), out);
        Map<String, String> proposal =
                FieldNames.propose(InventoryFile.open(out.toByteArray()).columns());
        JsonMapper json = JsonMapper.builder().build();
        Mapping mapping = json.convertValue(proposal, MappingRequest.class).mapping();

        Preview preview = Previewing.of(out.toByteArray(), mapping, EMPTY_WITH_SITES, PolicySamples.USUAL.girth());

        assertThat(preview.problems()).isEmpty();
        assertThat(lines(preview)).isEqualTo(exported());
    }
}
