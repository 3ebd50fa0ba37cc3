package org.bandtrail.testing;

import java.math.BigDecimal;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Compares JSON by meaning: white space and the order of the members of an object do not matter, everything else does:
 * the order of an array, a missing member as against null, 1 as against "1". Numbers are equal by value.
 */
public final class GoldenJson {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private GoldenJson() {}

    /** Fails with both texts if they do not mean the same. {@code what} names the subject in the message. */
    public static void assertSame(String what, String expected, String actual) {
        JsonNode left = read(expected, what + ", expected");
        JsonNode right = read(actual, what + ", actual");
        if (!left.equals(GoldenJson::compareByValue, right)) {
            throw new AssertionError("%s: the JSON differs.%nexpected: %s%nactual:   %s".formatted(what, left, right));
        }
    }

    static JsonNode read(String text, String what) {
        try {
            return JSON.readTree(text);
        } catch (JacksonException unreadable) {
            throw new AssertionError("%s is not JSON: %s".formatted(what, unreadable.getOriginalMessage()), unreadable);
        }
    }

    private static int compareByValue(JsonNode left, JsonNode right) {
        if (left.isNumber() && right.isNumber()) {
            BigDecimal value = left.decimalValue();
            return value.compareTo(right.decimalValue());
        }
        return left.equals(right) ? 0 : 1;
    }
}
