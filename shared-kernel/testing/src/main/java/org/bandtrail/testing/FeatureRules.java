package org.bandtrail.testing;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;

/**
 * Rules about what stands in a feature: its pure core, its shells, its events. Numbers are those of the house rules.
 */
final class FeatureRules {
    static final Set<String> SHELLS = Set.of("Aggregate", "Projection", "Controller");

    private FeatureRules() {}

    /**
     * 1. Commands, events, refusals and the type that decides know the JDK, the kernel and each other; of everything
     * else only the annotations that name them and the base of refusals. Other files without a role suffix are read
     * models and hold SQL, or are formulas.
     */
    static ArchRule domainIsPure(String base) {
        return classes()
                .that(Features.domainBelow(base))
                .should(Conditions.forEach("know only the JDK, the kernel and each other", subject -> {
                    return subject.getDirectDependenciesFromSelf().stream()
                            .filter(dependency -> !Features.pure(base, dependency.getTargetClass()))
                            .map(dependency -> dependency.getDescription())
                            .distinct()
                            .toList();
                }))
                .as("1. The core of a feature is pure");
    }

    /** 2. What Axon, a projector or HTTP calls is nobody else's business. */
    static ArchRule shellsAreNotPublic(String base) {
        return classes()
                .that()
                .resideInAPackage(base + "..")
                .and(DescribedPredicate.describe(
                        "are aggregates, projections or controllers",
                        type -> SHELLS.stream().anyMatch(type.getSimpleName()::endsWith)
                                && !SHELLS.contains(type.getSimpleName())
                                && !type.isInterface()))
                .should()
                .notBePublic()
                .allowEmptyShould(true)
                .as("2. Aggregates, projections and controllers are not public");
    }

    /** 3. Features may know each other, but not in a circle. */
    static ArchRule featuresHaveNoCycles(String base) {
        return slices().matching(base + ".(*)..")
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true)
                .as("3. Features have no cycles");
    }

    /** 8. Commands, events and contracts carry whole numbers in the smallest unit. */
    static ArchRule amountsAreWhole(String base) {
        return classes()
                .that(Features.messagesBelow(base))
                .should(Conditions.haveWholeAmounts())
                .as("8. Commands, events and contracts carry whole numbers");
    }

    /** 8, for packages in which no type at all may hold a fraction. */
    static ArchRule wholeAmountsIn(String packages) {
        return classes()
                .that()
                .resideInAPackage(packages)
                .should(Conditions.haveWholeAmounts())
                .as("8. No float, double or BigDecimal in " + packages);
    }

    /** 9. Events are sealed interfaces of records, each with a stored name of its own and a revision. */
    static ArchRule eventsAreStoredByName(String base) {
        return classes()
                .that(Features.eventInterfacesBelow(base))
                .should(new StoredByName())
                .as("9. Events are records with a stored name of their own and a revision");
    }

    /** 9, for contracts: each type of event says its name in the envelope, and no two say the same. */
    static ArchRule contractTypesAreNamedOnce(String base) {
        return classes()
                .that()
                .resideInAPackage(base + ".contract..")
                .and(DescribedPredicate.describe("say a TYPE", FeatureRules::saysType))
                .should(new TypeSaidOnce())
                .as("9. Names of published events end in their version and are used once");
    }

    private static boolean saysType(JavaClass type) {
        return type.tryGetField("TYPE")
                .map(field -> field.getModifiers().contains(JavaModifier.STATIC))
                .orElse(false);
    }
}
