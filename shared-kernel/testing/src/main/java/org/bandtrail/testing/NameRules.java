package org.bandtrail.testing;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.NullMarked;

/** Rules about packages and words. Numbers are those of the house rules. */
final class NameRules {
    private static final Set<String> EMPTY_SUFFIXES =
            Set.of("Entity", "DTO", "Dto", "VO", "Impl", "Manager", "Helper", "Helpers", "Util", "Utils", "Base");
    private static final Set<String> EMPTY_PACKAGES = Set.of(
            "common",
            "util",
            "utils",
            "misc",
            "model",
            "models",
            "dto",
            "service",
            "services",
            "impl",
            "helper",
            "helpers",
            "domain",
            "application",
            "infrastructure",
            "core");

    private NameRules() {}

    /** 10. Nothing is null unless it says so, and every package says what it is. The tidy test reads its text. */
    static ArchRule packagesAreNullMarked(String base) {
        return classes()
                .that()
                .resideInAPackage(base + "..")
                .should(Conditions.forEach(
                        "live in a package with a @NullMarked package-info",
                        type -> type.getPackage().isAnnotatedWith(NullMarked.class)
                                ? List.of()
                                : List.of("%s lacks a package-info with @NullMarked".formatted(type.getPackageName()))))
                .as("10. Every package is @NullMarked");
    }

    /** 11. A class is named for what it is in the trade; roles are few and known. */
    static ArchRule noEmptyWordsInClassNames(String base) {
        return classes()
                .that()
                .resideInAPackage(base + "..")
                .should(Conditions.forEach("be named for what they are", NameRules::complaints))
                .as("11. No empty words in class names");
    }

    /** 11. A package is named for what it holds, not for a kind of class. */
    static ArchRule noEmptyWordsInPackageNames(String base) {
        return classes()
                .that()
                .resideInAPackage(base + "..")
                .should(Conditions.forEach("live in a package named for what it holds", type -> {
                    List<String> words = List.of(type.getPackageName().split("\\."));
                    return words.stream()
                            .filter(EMPTY_PACKAGES::contains)
                            .map(word -> "package %s is named [%s]".formatted(type.getPackageName(), word))
                            .toList();
                }))
                .as("11. No empty words in package names");
    }

    private static List<String> complaints(JavaClass type) {
        String name = type.getSimpleName();
        boolean empty = EMPTY_SUFFIXES.stream().anyMatch(name::endsWith)
                || name.startsWith("Abstract") && name.length() > 8 && Character.isUpperCase(name.charAt(8));
        // Inside ReelEvent the word Event is said already.
        boolean twice = type.getEnclosingClass()
                .map(JavaClass::getSimpleName)
                .map(outer -> outer.endsWith("Event") && name.endsWith("Event")
                        || outer.endsWith("Command") && name.endsWith("Command"))
                .orElse(false);
        return empty || twice
                ? List.of("%s says nothing with a part of its name".formatted(type.getName()))
                : List.of();
    }
}
