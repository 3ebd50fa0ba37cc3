package org.bandtrail.testing;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;

/** Rules about who may know whom between services. Numbers are those of the house rules. */
final class BoundaryRules {
    private static final String HOUSE = "org.bandtrail.";
    private static final Set<String> SHARED = Set.of("kernel", "eventstore", "eventexchange");

    private BoundaryRules() {}

    /** 4. What others tell comes in by one door. */
    static ArchRule onlyReceivedSeesForeignContracts(String base) {
        return noClasses()
                .that()
                .resideInAPackage(base + "..")
                .and()
                .resideOutsideOfPackage(base + ".received..")
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "belong to the contract of another service", type -> isContract(type) && !below(base, type)))
                .as("4. Only received knows the contract of another service");
    }

    /** 4. What is told goes out by the other door. */
    static ArchRule onlyPublishedSeesOwnContract(String base) {
        return noClasses()
                .that()
                .resideInAPackage(base + "..")
                .and()
                .resideOutsideOfPackages(base + ".published..", base + ".contract..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage(base + ".contract..")
                .as("4. Only published knows the own contract");
    }

    /** 5. Services know each other by contracts alone; whoever starts several of them is not a service. */
    static ArchRule noOtherAppIsSeen(String base) {
        return noClasses()
                .that()
                .resideInAPackage(base + "..")
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "belong to another app",
                        type -> type.getName().startsWith(HOUSE)
                                && !below(base, type)
                                && !isContract(type)
                                && !SHARED.contains(room(type))))
                .as("5. No app knows another app");
    }

    /** 6. Below the kernel and the contracts there is the JDK and nothing else. */
    static ArchRule onlyJavaBelow(String packages) {
        return classes()
                .that()
                .resideInAPackage(packages)
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("java..", "org.jspecify..", packages)
                .as("6. %s depends on the JDK alone".formatted(packages));
    }

    private static boolean isContract(JavaClass type) {
        return type.getName().startsWith(HOUSE) && type.getPackageName().contains(".contract.");
    }

    private static boolean below(String base, JavaClass type) {
        return type.getPackageName().equals(base) || type.getPackageName().startsWith(base + ".");
    }

    private static String room(JavaClass type) {
        return type.getName().substring(HOUSE.length()).split("\\.", 2)[0];
    }
}
