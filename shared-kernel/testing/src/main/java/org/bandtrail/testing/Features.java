package org.bandtrail.testing;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.List;
import java.util.Set;

/** Tells which classes of a service are the core of a feature, by their names as the house gives them. */
final class Features {
    /** Not features: the two doors and what is told through one of them. */
    private static final Set<String> DOORS = Set.of("contract", "received", "published");

    private static final List<String> CORE = List.of("Command", "Event", "Refused", "");
    private static final Set<String> ALLOWED_ELSEWHERE = Set.of(
            StoredType.STORED_AS,
            StoredType.REVISION,
            "org.axonframework.modelling.command.TargetAggregateIdentifier",
            "org.bandtrail.eventstore.Refusal");

    private Features() {}

    /**
     * {@code XCommand}, {@code XEvent}, {@code XRefused}, {@code X} and all that is nested in them, for every
     * {@code XEvent}.
     */
    static DescribedPredicate<JavaClass> domainBelow(String base) {
        return DescribedPredicate.describe("are the core of a feature below " + base, type -> isDomain(base, type));
    }

    /** The sealed interfaces called {@code XEvent} in feature packages. */
    static DescribedPredicate<JavaClass> eventInterfacesBelow(String base) {
        return DescribedPredicate.describe("are events of a feature below " + base, type -> isEvent(base, type));
    }

    /** Commands and events of features with all that is nested in them, and all types of the contract. */
    static DescribedPredicate<JavaClass> messagesBelow(String base) {
        return DescribedPredicate.describe("are commands, events or contract types below " + base, type -> {
            if (type.getPackageName().startsWith(base + ".contract")) {
                return true;
            }
            String outer = outermost(type).getSimpleName();
            return isDomain(base, type) && (outer.endsWith("Command") || outer.endsWith("Event"));
        });
    }

    /** Whether the core of a feature may know this type. */
    static boolean pure(String base, JavaClass type) {
        JavaClass bare = type.getBaseComponentType();
        String name = bare.getPackageName();
        return bare.isPrimitive()
                || isPlainJava(name)
                || name.startsWith("org.jspecify")
                || name.startsWith("org.bandtrail.kernel")
                || ALLOWED_ELSEWHERE.contains(bare.getName())
                || isFeature(base, name) && !isShell(bare) && !holdsTechnology(bare);
    }

    /** Read models hold SQL and carry no suffix, so they are known by what they use. */
    private static boolean holdsTechnology(JavaClass type) {
        return type.getDirectDependenciesFromSelf().stream()
                .map(dependency -> dependency.getTargetClass().getPackageName())
                .anyMatch(name -> name.startsWith("org.springframework.") || name.startsWith("java.sql"));
    }

    private static boolean isPlainJava(String name) {
        return name.startsWith("java.") && !name.startsWith("java.sql") && !name.startsWith("java.net.http");
    }

    private static boolean isShell(JavaClass type) {
        String name = outermost(type).getSimpleName();
        return FeatureRules.SHELLS.stream().anyMatch(name::endsWith) || name.endsWith("Wiring");
    }

    private static boolean isDomain(String base, JavaClass type) {
        if (!isFeature(base, type.getPackageName())) {
            return false;
        }
        JavaClass outer = outermost(type);
        String name = outer.getSimpleName();
        return outer.getPackage().getClasses().stream()
                .filter(candidate -> isEvent(base, candidate))
                .map(event -> stem(event.getSimpleName()))
                .anyMatch(stem -> CORE.stream().anyMatch(role -> name.equals(stem + role)));
    }

    private static boolean isEvent(String base, JavaClass type) {
        return isFeature(base, type.getPackageName())
                && type.isInterface()
                && type.isTopLevelClass()
                && type.getSimpleName().endsWith("Event")
                && !type.getModifiers().contains(JavaModifier.SYNTHETIC);
    }

    private static boolean isFeature(String base, String packageName) {
        if (!packageName.startsWith(base + ".")) {
            return false;
        }
        return !DOORS.contains(packageName.substring(base.length() + 1).split("\\.", 2)[0]);
    }

    private static String stem(String eventName) {
        return eventName.substring(0, eventName.length() - "Event".length());
    }

    private static JavaClass outermost(JavaClass type) {
        JavaClass outer = type;
        while (outer.getEnclosingClass().isPresent()) {
            outer = outer.getEnclosingClass().get();
        }
        return outer;
    }
}
