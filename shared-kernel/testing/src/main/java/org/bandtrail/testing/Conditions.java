package org.bandtrail.testing;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Conditions that house rules share. */
final class Conditions {
    private static final Set<String> FRACTIONS =
            Set.of("float", "double", "java.lang.Float", "java.lang.Double", "java.math.BigDecimal");

    private Conditions() {}

    /** A condition that lists complaints about a class; none means it is fulfilled. */
    static ArchCondition<JavaClass> forEach(String description, Function<JavaClass, List<String>> complaints) {
        return new ArchCondition<>(description) {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                complaints.apply(type).forEach(complaint -> events.add(SimpleConditionEvent.violated(type, complaint)));
            }
        };
    }

    /** No field, parameter or result is a fraction or a collection of fractions. */
    static ArchCondition<JavaClass> haveWholeAmounts() {
        return forEach("carry whole numbers in the smallest unit", type -> {
            List<String> complaints = new ArrayList<>();
            for (JavaField field : type.getFields()) {
                add(complaints, field.getFullName(), field.getType());
            }
            for (JavaMethod method : type.getMethods()) {
                add(complaints, method.getFullName(), method.getReturnType());
                method.getParameterTypes().forEach(parameter -> add(complaints, method.getFullName(), parameter));
            }
            return complaints;
        });
    }

    private static void add(List<String> complaints, String member, JavaType type) {
        for (JavaClass involved : type.getAllInvolvedRawTypes()) {
            if (FRACTIONS.contains(involved.getBaseComponentType().getName())) {
                complaints.add("%s has a %s. Use a whole number in the smallest unit"
                        .formatted(member, involved.getSimpleName()));
            }
        }
    }
}
