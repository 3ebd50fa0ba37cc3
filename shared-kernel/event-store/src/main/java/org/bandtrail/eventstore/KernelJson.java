package org.bandtrail.eventstore;

import java.util.function.Function;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LoadId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.JacksonModule;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.deser.std.StdDeserializer;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/**
 * How kernel types look in JSON. On disk a length is its whole number of millimetres and a count its number; from
 * people, over HTTP, a length is text with its unit, because a bare number hides whether it is feet or inches.
 */
public final class KernelJson {
    private KernelJson() {}

    /** For stored events: numbers in the smallest unit. */
    public static JacksonModule stored() {
        SimpleModule module = identities("kernel-stored");
        number(module, Length.class, Length::mm, Length::ofMm);
        number(module, Pieces.class, Pieces::count, Pieces::of);
        return module;
    }

    /** For requests and answers: a length is read from text with its unit and written as millimetres. */
    public static JacksonModule http() {
        SimpleModule module = identities("kernel-http");
        number(module, Pieces.class, Pieces::count, Pieces::of);
        TextForm.add(module, Length.class, Length::parse);
        module.addSerializer(Length.class, new NumberWriter<>(Length.class, Length::mm));
        return module;
    }

    private static SimpleModule identities(String name) {
        SimpleModule module = new SimpleModule(name);
        TextForm.add(module, ReelId.class, ReelId::new);
        TextForm.add(module, BatchId.class, BatchId::new);
        TextForm.add(module, MaterialCode.class, MaterialCode::new);
        TextForm.add(module, DepotId.class, DepotId::new);
        TextForm.add(module, CrewId.class, CrewId::new);
        TextForm.add(module, PersonId.class, PersonId::new);
        TextForm.add(module, SiteId.class, SiteId::new);
        TextForm.add(module, TreeId.class, TreeId::new);
        TextForm.add(module, BandId.class, BandId::new);
        TextForm.add(module, BagId.class, BagId::new);
        TextForm.add(module, LoadId.class, LoadId::new);
        TextForm.add(module, KitId.class, KitId::new);
        return module;
    }

    private static <T> void number(SimpleModule module, Class<T> type, Function<T, Long> out, Function<Long, T> in) {
        module.addSerializer(type, new NumberWriter<>(type, out));
        module.addDeserializer(type, new NumberReader<>(type, in));
    }

    private static final class NumberWriter<T> extends StdSerializer<T> {
        private final Function<T, Long> out;

        NumberWriter(Class<T> type, Function<T, Long> out) {
            super(type);
            this.out = out;
        }

        @Override
        public void serialize(T value, JsonGenerator json, SerializationContext context) {
            json.writeNumber(out.apply(value));
        }
    }

    private static final class NumberReader<T> extends StdDeserializer<T> {
        private final Function<Long, T> in;

        NumberReader(Class<T> type, Function<Long, T> in) {
            super(type);
            this.in = in;
        }

        @Override
        public T deserialize(JsonParser json, DeserializationContext context) {
            return in.apply(json.getLongValue());
        }
    }
}
