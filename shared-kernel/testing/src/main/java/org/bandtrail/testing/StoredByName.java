package org.bandtrail.testing;

import com.tngtech.archunit.core.domain.JavaAnnotation;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every permitted type of an event interface is a record with a stored name that no other has, and a revision. */
final class StoredByName extends ArchCondition<JavaClass> {
    private final Map<String, String> ownerOfName = new HashMap<>();

    StoredByName() {
        super("consist of records with a stored name of their own and a revision");
    }

    @Override
    public void init(Collection<JavaClass> events) {
        ownerOfName.clear();
    }

    @Override
    public void check(JavaClass event, ConditionEvents events) {
        List<JavaClass> permitted = event.getAllSubclasses().stream()
                .filter(type -> !type.isInterface())
                .toList();
        if (permitted.isEmpty()) {
            complain(event, events, "%s permits no record".formatted(event.getName()));
        }
        for (JavaClass type : permitted) {
            check(event, type, events);
        }
    }

    private void check(JavaClass event, JavaClass type, ConditionEvents events) {
        if (!type.isRecord()) {
            complain(event, events, "%s is not a record".formatted(type.getName()));
        }
        if (!type.getModifiers().contains(JavaModifier.FINAL)) {
            complain(event, events, "%s is not final".formatted(type.getName()));
        }
        if (text(type, StoredType.REVISION).isEmpty()) {
            complain(event, events, "%s has no @Revision".formatted(type.getName()));
        }
        Optional<String> name = text(type, StoredType.STORED_AS);
        if (name.isEmpty()) {
            complain(event, events, "%s has no @StoredAs".formatted(type.getName()));
            return;
        }
        String other = ownerOfName.putIfAbsent(name.get(), type.getName());
        if (other != null && !other.equals(type.getName())) {
            complain(event, events, "%s has the stored name [%s] of %s".formatted(type.getName(), name.get(), other));
        }
    }

    private static Optional<String> text(JavaClass type, String annotation) {
        return type.getAnnotations().stream()
                .filter(present -> present.getRawType().getName().equals(annotation))
                .findFirst()
                .flatMap((JavaAnnotation<JavaClass> present) -> present.get("value"))
                .map(Object::toString);
    }

    private static void complain(JavaClass event, ConditionEvents events, String complaint) {
        events.add(SimpleConditionEvent.violated(event, complaint));
    }
}
