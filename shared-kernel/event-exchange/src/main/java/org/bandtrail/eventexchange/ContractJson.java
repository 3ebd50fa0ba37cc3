package org.bandtrail.eventexchange;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.stream.Collectors;
import org.bandtrail.eventexchange.entry.NullMarkedRecords;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.cfg.DateTimeFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The JSON of contract records. Fields keep the order of the record, absent values are left out, instants are ISO 8601.
 * A reader ignores fields it does not know, because a publisher may add some within a version; a field that is not
 * {@code @Nullable} must be there, and a whole number never becomes zero by being absent.
 */
public final class ContractJson {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .addModule(NullMarkedRecords.module())
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .disable(DateTimeFeature.WRITE_DATES_AS_TIMESTAMPS)
            .disable(tools.jackson.databind.MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .changeDefaultPropertyInclusion(inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_NULL))
            .build();

    private ContractJson() {}

    /** Writes a contract record as JSON text. */
    public static String write(Object contractRecord) {
        return MAPPER.writeValueAsString(contractRecord);
    }

    /**
     * Reads JSON as a contract record.
     *
     * @throws UnreadableEvent naming the field and the value if it does not fit
     */
    public static <T> T read(JsonNode data, Class<T> contractType) {
        try {
            T read = MAPPER.treeToValue(data, contractType);
            if (read == null) {
                throw new UnreadableEvent(
                        "%s is expected, but the data is null.".formatted(contractType.getSimpleName()));
            }
            return read;
        } catch (JacksonException misfit) {
            throw new UnreadableEvent(
                    "%s cannot be read%s: %s"
                            .formatted(contractType.getSimpleName(), at(misfit), misfit.getOriginalMessage()),
                    misfit);
        }
    }

    /**
     * Reads JSON text as a contract record, for samples and stored rows.
     *
     * @throws UnreadableEvent naming the field and the value if it does not fit
     */
    public static <T> T read(String json, Class<T> contractType) {
        return read(tree(json), contractType);
    }

    static JsonNode tree(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (JacksonException misfit) {
            throw new UnreadableEvent("Not JSON: " + misfit.getOriginalMessage(), misfit);
        }
    }

    static JsonMapper mapper() {
        return MAPPER;
    }

    /** For example {@code moves[0].quantity}; empty if the data as a whole is at fault. */
    private static String at(JacksonException misfit) {
        String path = misfit.getPath().stream()
                .map(step ->
                        step.getPropertyName() == null ? "[" + step.getIndex() + "]" : "." + step.getPropertyName())
                .collect(Collectors.joining());
        return path.isEmpty() ? "" : " at [%s]".formatted(path.replaceFirst("^\\.", ""));
    }
}
