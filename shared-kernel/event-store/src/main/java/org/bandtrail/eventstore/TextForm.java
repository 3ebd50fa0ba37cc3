package org.bandtrail.eventstore;

import java.util.function.Function;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.deser.std.StdDeserializer;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/**
 * Gives a value type one JSON form, text, so that the type itself needs no annotation. What cannot be read is reported
 * with the message of the type's own parser.
 */
public final class TextForm {
    private TextForm() {}

    /** Adds text form for a type: written by {@code toString}, read by the parser. */
    public static <T> void add(SimpleModule module, Class<T> type, Function<String, T> parse) {
        module.addSerializer(type, new Writer<>(type));
        module.addDeserializer(type, new Reader<>(type, parse));
    }

    private static final class Writer<T> extends StdSerializer<T> {
        Writer(Class<T> type) {
            super(type);
        }

        @Override
        public void serialize(T value, JsonGenerator json, SerializationContext context) {
            json.writeString(value.toString());
        }
    }

    private static final class Reader<T> extends StdDeserializer<T> {
        private final Function<String, T> parse;

        Reader(Class<T> type, Function<String, T> parse) {
            super(type);
            this.parse = parse;
        }

        @Override
        public T deserialize(JsonParser json, DeserializationContext context) {
            String text = json.getValueAsString();
            return parse.apply(text == null ? "" : text); // Jackson adds the field to what the parser refuses
        }
    }
}
