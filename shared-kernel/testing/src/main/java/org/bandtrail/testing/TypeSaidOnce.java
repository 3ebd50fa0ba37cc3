package org.bandtrail.testing;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.lang.reflect.Field;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * The constant {@code TYPE} of a published event: {@code <service>.<event>.v<n>}, {@code n} as in its package, used
 * once.
 */
final class TypeSaidOnce extends ArchCondition<JavaClass> {
    private static final Pattern SPELLING = Pattern.compile("[a-z]+(-[a-z]+)*\\.[a-z]+(-[a-z]+)*\\.v[1-9][0-9]*");
    private final Map<String, String> ownerOfName = new HashMap<>();

    TypeSaidOnce() {
        super("say a TYPE that no other says and that ends in the version of its package");
    }

    @Override
    public void init(Collection<JavaClass> types) {
        ownerOfName.clear();
    }

    @Override
    public void check(JavaClass type, ConditionEvents events) {
        String name = constant(type);
        String version = name.substring(name.lastIndexOf('.') + 1);
        if (!SPELLING.matcher(name).matches() || !type.getPackageName().endsWith("." + version)) {
            events.add(SimpleConditionEvent.violated(
                    type,
                    "%s has TYPE [%s]. Write <service>.<event>.v<n>, n as in its package"
                            .formatted(type.getName(), name)));
        }
        String other = ownerOfName.putIfAbsent(name, type.getName());
        if (other != null) {
            events.add(SimpleConditionEvent.violated(
                    type, "%s has the TYPE [%s] of %s".formatted(type.getName(), name, other)));
        }
    }

    /** Byte code as ArchUnit shows it has no values of constants, so the class is asked. */
    private static String constant(JavaClass type) {
        try {
            Field field = type.reflect().getDeclaredField("TYPE");
            field.setAccessible(true);
            return String.valueOf(field.get(null));
        } catch (ReflectiveOperationException unreadable) {
            throw new AssertionError("TYPE of %s cannot be read.".formatted(type.getName()), unreadable);
        }
    }
}
