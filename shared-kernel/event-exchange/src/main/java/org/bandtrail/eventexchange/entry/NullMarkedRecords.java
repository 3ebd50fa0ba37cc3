package org.bandtrail.eventexchange.entry;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.io.Serial;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.Constructor;
import java.util.Collection;
import java.util.Map;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.Version;
import tools.jackson.databind.JacksonModule;
import tools.jackson.databind.cfg.MapperConfig;
import tools.jackson.databind.introspect.Annotated;
import tools.jackson.databind.introspect.AnnotatedMember;
import tools.jackson.databind.introspect.AnnotatedParameter;
import tools.jackson.databind.introspect.NopAnnotationIntrospector;
import tools.jackson.databind.module.SimpleModule;

/**
 * Makes JSON keep the promise of {@code @NullMarked}: a component of a record that is not {@code @Nullable} must be
 * there and not be null. Otherwise the record would be made with a null that the compiler has ruled out, and fail far
 * from its cause. A list, set or map that is not there is empty. Primitives are left to
 * {@code FAIL_ON_NULL_FOR_PRIMITIVES}.
 */
public final class NullMarkedRecords extends NopAnnotationIntrospector {
    @Serial
    private static final long serialVersionUID = 1L;

    private NullMarkedRecords() {}

    /** To be added to a mapper that reads records. */
    public static JacksonModule module() {
        return new SimpleModule("null-marked-records") {
            @Serial
            private static final long serialVersionUID = 1L;

            @Override
            public void setupModule(SetupContext context) {
                super.setupModule(context);
                context.appendAnnotationIntrospector(new NullMarkedRecords());
            }
        };
    }

    @Override
    public @Nullable Boolean hasRequiredMarker(MapperConfig<?> config, AnnotatedMember member) {
        return promised(member) && !mayBeEmpty(member.getRawType()) ? Boolean.TRUE : null;
    }

    @Override
    public JsonSetter.Value findSetterInfo(MapperConfig<?> config, Annotated member) {
        if (!promised(member)) {
            return JsonSetter.Value.empty();
        }
        return JsonSetter.Value.forValueNulls(mayBeEmpty(member.getRawType()) ? Nulls.AS_EMPTY : Nulls.FAIL);
    }

    @Override
    public Version version() {
        return Version.unknownVersion();
    }

    private static boolean mayBeEmpty(Class<?> type) {
        return Collection.class.isAssignableFrom(type) || Map.class.isAssignableFrom(type);
    }

    private static boolean promised(Annotated member) {
        if (!(member instanceof AnnotatedParameter parameter)
                || parameter.getRawType().isPrimitive()) {
            return false;
        }
        Class<?> type = parameter.getDeclaringClass();
        if (!type.isRecord() || !isNullMarked(type)) {
            return false;
        }
        AnnotatedType[] declared = parameter.getOwner().getAnnotated() instanceof Constructor<?> constructor
                ? constructor.getAnnotatedParameterTypes()
                : new AnnotatedType[0];
        return parameter.getIndex() < declared.length
                && !declared[parameter.getIndex()].isAnnotationPresent(Nullable.class);
    }

    private static boolean isNullMarked(Class<?> type) {
        for (@Nullable Class<?> each = type; each != null; each = each.getEnclosingClass()) {
            if (each.isAnnotationPresent(NullMarked.class)) {
                return true;
            }
        }
        return type.getPackage().isAnnotationPresent(NullMarked.class);
    }
}
