package org.bandtrail.testing;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.EvaluationResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The rules of the house over byte code, one line in each module:
 *
 * <pre>{@code
 * class HouseRulesTest {
 *     @Test
 *     void the_house_rules_hold() {
 *         HouseRules.check("org.bandtrail.supplystock");
 *     }
 * }
 * }</pre>
 *
 * <p>All broken rules are reported together. A rule that matches no class fails unless the module may do without: a
 * rule on a package that does not exist is green for ever. Rules over sources (sizes, words, links) stand beside them.
 */
public final class HouseRules {

    private HouseRules() {}

    /**
     * Checks a service: the classes of its app and its contract, and its tests. It must have features with events and a
     * contract, otherwise half of the rules would check nothing.
     *
     * @param base its package, for example {@code org.bandtrail.supplystock}
     * @throws AssertionError that lists every broken rule with the classes that break it
     */
    public static void check(String base) {
        List<ArchRule> rules = new ArrayList<>(everywhere(base));
        rules.add(FeatureRules.domainIsPure(base));
        rules.add(FeatureRules.amountsAreWhole(base));
        rules.add(FeatureRules.eventsAreStoredByName(base));
        rules.add(FeatureRules.contractTypesAreNamedOnce(base));
        rules.add(BoundaryRules.onlyJavaBelow(base + ".contract.."));
        report(base, rules, TestRules.all(base));
    }

    /**
     * Checks a module that decides nothing and tells nobody: the front desk, the event store, the event exchange, the
     * launcher. The rules about features, events and contracts are left out.
     *
     * @param base its package, for example {@code org.bandtrail.frontdesk}
     * @param mayMakeChance simple names of classes that may make time or chance because no history depends on it, such
     *     as one that waits a random moment before it tries again
     * @throws AssertionError that lists every broken rule with the classes that break it
     */
    public static void checkWithoutFeatures(String base, String... mayMakeChance) {
        report(base, everywhere(base, mayMakeChance), TestRules.all(base));
    }

    /**
     * Checks the kernel: whole amounts, and nothing below it but the JDK. Its tests are out of sight here, because this
     * module depends on it; the tidy test reads their names.
     *
     * @param base its package
     * @throws AssertionError that lists every broken rule with the classes that break it
     */
    public static void checkKernel(String base) {
        List<ArchRule> rules = new ArrayList<>(everywhere(base));
        rules.add(BoundaryRules.onlyJavaBelow(base + ".."));
        rules.add(FeatureRules.wholeAmountsIn(base + ".."));
        report(base, rules, List.of());
    }

    private static List<ArchRule> everywhere(String base, String... mayMakeChance) {
        return List.of(
                FeatureRules.shellsAreNotPublic(base),
                FeatureRules.featuresHaveNoCycles(base),
                BoundaryRules.onlyReceivedSeesForeignContracts(base),
                BoundaryRules.onlyPublishedSeesOwnContract(base),
                BoundaryRules.noOtherAppIsSeen(base),
                ChanceRule.timeAndChanceAreGiven(base, Set.of(mayMakeChance)),
                NameRules.packagesAreNullMarked(base),
                NameRules.noEmptyWordsInClassNames(base),
                NameRules.noEmptyWordsInPackageNames(base));
    }

    private static void report(String base, List<ArchRule> rules, List<ArchRule> testRules) {
        JavaClasses production = classes(base, ImportOption.Predefined.DO_NOT_INCLUDE_TESTS);
        if (production.isEmpty()) {
            throw new AssertionError(
                    "There is no class below [%s]; the house rules would check nothing.".formatted(base));
        }
        List<String> broken = new ArrayList<>();
        rules.forEach(rule -> evaluate(rule, production, broken));
        if (!testRules.isEmpty()) {
            JavaClasses tests = classes(base, ImportOption.Predefined.ONLY_INCLUDE_TESTS);
            testRules.forEach(rule -> evaluate(rule, tests, broken));
        }
        if (!broken.isEmpty()) {
            throw new AssertionError("%d house rules are broken below [%s]:%n%s"
                    .formatted(broken.size(), base, String.join("\n\n", broken)));
        }
    }

    private static JavaClasses classes(String base, ImportOption option) {
        return new ClassFileImporter().withImportOption(option).importPackages(base);
    }

    private static void evaluate(ArchRule rule, JavaClasses classes, List<String> broken) {
        try {
            EvaluationResult result = rule.evaluate(classes);
            if (result.hasViolation()) {
                broken.add(result.getFailureReport().toString());
            }
        } catch (AssertionError empty) {
            broken.add(String.valueOf(empty.getMessage()));
        }
    }
}
