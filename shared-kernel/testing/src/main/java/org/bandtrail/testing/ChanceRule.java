package org.bandtrail.testing;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;

/**
 * Rule 7: time, identities and randomness are given, so that a history can be replayed and a test can stand still. Only
 * {@code *Wiring} and {@code EventClock} may make them. {@code System.nanoTime} is allowed: it measures a duration and
 * tells no time.
 */
final class ChanceRule {
    private static final Set<String> SOURCES = Set.of(
            "java.util.Random",
            "java.util.SplittableRandom",
            "java.security.SecureRandom",
            "java.util.concurrent.ThreadLocalRandom");

    private ChanceRule() {}

    static ArchRule timeAndChanceAreGiven(String base) {
        return timeAndChanceAreGiven(base, Set.of());
    }

    /** {@code others}: simple names of further classes that may make them. */
    static ArchRule timeAndChanceAreGiven(String base, Set<String> others) {
        return classes()
                .that()
                .resideInAPackage(base + "..")
                .and(DescribedPredicate.describe("neither wire nor are the clock", type -> !mayMakeThem(type, others)))
                .should(Conditions.forEach(
                        "be given time, identities and chance",
                        type -> type.getAccessesFromSelf().stream()
                                .filter(ChanceRule::makesTimeOrChance)
                                .map(JavaAccess::getDescription)
                                .toList()))
                .as("7. Time, identities and chance are given, never made");
    }

    static boolean isChance(JavaClass type) {
        return SOURCES.contains(type.getName());
    }

    private static boolean mayMakeThem(JavaClass type, Set<String> others) {
        String name = type.getName().substring(type.getPackageName().length() + 1);
        String outer = name.split("\\$", 2)[0];
        return outer.endsWith("Wiring") || outer.equals("EventClock") || others.contains(outer);
    }

    private static boolean makesTimeOrChance(JavaAccess<?> access) {
        AccessTarget target = access.getTarget();
        String owner = target.getOwner().getName();
        String member = target.getName();
        boolean now = owner.startsWith("java.time.") && member.equals("now") && !takesClock(target);
        boolean clock = owner.equals("java.time.Clock") && (member.startsWith("system") || member.startsWith("tick"));
        boolean uuid = owner.equals("java.util.UUID") && member.equals("randomUUID");
        boolean millis = owner.equals("java.lang.System") && member.equals("currentTimeMillis");
        boolean math = owner.endsWith("Math") && member.equals("random");
        boolean date = owner.equals("java.util.Date") && member.equals("<init>") && takesNothing(target);
        boolean source = isChance(target.getOwner())
                && Set.of("<init>", "current", "getInstanceStrong").contains(member);
        return now || clock || uuid || millis || math || date || source;
    }

    private static boolean takesClock(AccessTarget target) {
        return target instanceof AccessTarget.CodeUnitAccessTarget unit
                && unit.getRawParameterTypes().stream()
                        .anyMatch(type -> type.getName().equals("java.time.Clock"));
    }

    private static boolean takesNothing(AccessTarget target) {
        return target instanceof AccessTarget.CodeUnitAccessTarget unit
                && unit.getRawParameterTypes().isEmpty();
    }
}
