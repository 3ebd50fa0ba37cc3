package org.bandtrail.eventstore;

import java.util.List;
import org.axonframework.serialization.SerializedType;
import org.axonframework.serialization.SimpleSerializedType;
import org.axonframework.serialization.jackson3.Jackson3Serializer;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JacksonModule;

/**
 * Writes events as JSON under their stored names. Positions of readers and other framework types keep their class
 * names; they are not history.
 */
public final class StoredNameSerializer extends Jackson3Serializer {
    private final StoredNames names;

    private StoredNameSerializer(Builder builder, StoredNames names) {
        super(builder);
        this.names = names;
    }

    /**
     * A serializer for these names.
     *
     * @param modules text forms of the kernel's and the service's own value types
     */
    public static StoredNameSerializer of(StoredNames names, List<? extends JacksonModule> modules) {
        return new StoredNameSerializer(
                builder().jsonMapperBuilderCustomizer(mapper -> mapper.addModules(List.copyOf(modules))), names);
    }

    @Override
    public SerializedType typeForClass(@Nullable Class type) {
        String name = type == null ? null : names.nameOf(type);
        return name == null
                ? super.typeForClass(type)
                : new SimpleSerializedType(name, getRevisionResolver().revisionOf(type));
    }

    @Override
    protected String resolveClassName(SerializedType type) {
        Class<?> event = names.classOf(type.getName());
        return event == null ? super.resolveClassName(type) : event.getName();
    }
}
