package org.bandtrail.siteinstalls.policies;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ClassPathResource;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/**
 * What the trade says about one value of the policy. The guides are data, {@code defaults/policy-values.json}: they
 * bind nobody, they make a page readable and a slip of the unit visible.
 *
 * @param name of the value, as in {@link CutPolicyView.Values}
 * @param label what it is, in words
 * @param group under which heading it stands
 * @param unit mm, pieces, days, permille, word or yes-no
 * @param low smaller ones are asked about, null for words
 * @param high larger ones are asked about, null for words
 * @param source where the usual values come from
 * @param why what the value is for
 */
public record ValueGuide(
        String name,
        String label,
        String group,
        String unit,
        @Nullable Long low,
        @Nullable Long high,
        String source,
        String why) {

    /** All guides, in the order of the form. */
    public static List<ValueGuide> read() {
        try (var file = new ClassPathResource("defaults/policy-values.json").getInputStream()) {
            return List.copyOf(JsonMapper.builder().build().readValue(file, new TypeReference<List<ValueGuide>>() {}));
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The guides of the policy's values cannot be read.", unreadable);
        }
    }
}
