package org.bandtrail.testing;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAnnotation;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.properties.HasAnnotations;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Rule 12, about tests: they are run, and a test that is switched off says which issue switches it on again. */
final class TestRules {
    /** The suffixes the build runs; the root pom lists the same ones. */
    static final Set<String> SUFFIXES = Set.of("Test", "Simulation", "Journey");

    private static final Pattern ISSUE = Pattern.compile("(issue |#)\\d+", Pattern.CASE_INSENSITIVE);
    private static final String DISABLED = "org.junit.jupiter.api.Disabled";

    private TestRules() {}

    static List<ArchRule> all(String base) {
        return List.of(testClassesAreRun(base), disabledTestsNameTheirIssue(base));
    }

    /**
     * The build looks for classes by name; a test under another name is never run and nobody is told. Abstract classes
     * are suites that others inherit under a name of their own.
     */
    static ArchRule testClassesAreRun(String base) {
        return classes()
                .that()
                .resideInAPackage(base + "..")
                .and(DescribedPredicate.describe("have tests and are no suites for others", TestRules::hasTests))
                .should(Conditions.forEach("have a name the build runs", type -> {
                    String name = outermost(type);
                    return SUFFIXES.stream().anyMatch(name::endsWith)
                            ? List.of()
                            : List.of("%s has tests and is never run. End its name in one of %s"
                                    .formatted(type.getName(), SUFFIXES));
                }))
                .as("12. Every test class has a name the build runs");
    }

    static ArchRule disabledTestsNameTheirIssue(String base) {
        return classes()
                .that()
                .resideInAPackage(base + "..")
                .should(Conditions.forEach("name the issue of each switched-off test", type -> {
                    List<String> complaints = new ArrayList<>();
                    complain(type.getName(), type, complaints);
                    type.getMethods().forEach(method -> complain(method.getFullName(), method, complaints));
                    return complaints;
                }))
                .as("12. A test that is switched off names its issue");
    }

    private static void complain(String what, HasAnnotations<?> tested, List<String> complaints) {
        for (JavaAnnotation<?> annotation : tested.getAnnotations()) {
            if (annotation.getRawType().getName().equals(DISABLED)) {
                String reason = annotation.get("value").map(Object::toString).orElse("");
                if (!ISSUE.matcher(reason).find()) {
                    complaints.add(
                            "%s is switched off because [%s]. Name the issue: issue 7, or #7".formatted(what, reason));
                }
            }
        }
    }

    private static boolean hasTests(JavaClass type) {
        return !type.getModifiers().contains(JavaModifier.ABSTRACT)
                && type.getMethods().stream().anyMatch(TestRules::isTest);
    }

    private static boolean isTest(JavaMethod method) {
        return method.isAnnotatedWith("org.junit.jupiter.api.Test")
                || method.isMetaAnnotatedWith("org.junit.platform.commons.annotation.Testable");
    }

    private static String outermost(JavaClass type) {
        return type.getName().split("\\$", 2)[0];
    }
}
