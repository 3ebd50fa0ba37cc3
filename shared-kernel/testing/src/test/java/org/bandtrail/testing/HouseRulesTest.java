package org.bandtrail.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.EvaluationResult;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each house rule fails on the class that breaks it, holds on the service that keeps it, and never checks nothing. */
class HouseRulesTest {
    private static final String BROKEN = "org.bandtrail.testing.broken.";
    private static final String SOUND = "org.bandtrail.testing.sound";
    private static final JavaClasses ALL = new ClassFileImporter().importPackages("org.bandtrail.testing");

    private static Arguments breaks(String name, Function<String, ArchRule> rule, String... complaints) {
        return arguments(BROKEN + name, rule, List.of(complaints));
    }

    static Stream<Arguments> rules() {
        return Stream.concat(rulesOnFeatures(), rulesOnNeighboursAndNames());
    }

    private static Stream<Arguments> rulesOnFeatures() {
        return Stream.of(
                breaks("purity", FeatureRules::domainIsPure, "java.sql.Connection", "Component", "ReelBalances"),
                breaks("shells", FeatureRules::shellsAreNotPublic, "ReelAggregate"),
                breaks("circle", FeatureRules::featuresHaveNoCycles, "Slice reels", "Slice trees"),
                breaks(
                        "fractions",
                        FeatureRules::amountsAreWhole,
                        "metres has a double",
                        "feet has a Float",
                        "costs has a BigDecimal"),
                breaks(
                        "stored",
                        FeatureRules::eventsAreStoredByName,
                        "has the stored name [reel.received] of",
                        "Nameless has no @StoredAs",
                        "Nameless has no @Revision",
                        "Counted is not a record"),
                breaks(
                        "types",
                        FeatureRules::contractTypesAreNamedOnce,
                        "has the TYPE [types.reel-told.v1] of",
                        "ReelToldLate has TYPE [types.reel-told-late.v2]",
                        "ReelShouted has TYPE [REEL]"));
    }

    private static Stream<Arguments> rulesOnNeighboursAndNames() {
        return Stream.of(
                breaks("doors", BoundaryRules::onlyReceivedSeesForeignContracts, "BandSeen"),
                breaks("doors", BoundaryRules::onlyPublishedSeesOwnContract, "ReelTold"),
                breaks("doors", BoundaryRules::noOtherAppIsSeen, "neighbour.bands.Band"),
                breaks("kernel", base -> BoundaryRules.onlyJavaBelow(base + ".."), "Component"),
                breaks("kernel", base -> FeatureRules.wholeAmountsIn(base + ".."), "Metre.value has a double"),
                breaks(
                        "chance",
                        ChanceRule::timeAndChanceAreGiven,
                        "Instant.now()",
                        "LocalDate.now(java.time.ZoneId)",
                        "Clock.systemUTC()",
                        "UUID.randomUUID()",
                        "System.currentTimeMillis()",
                        "Math.random()",
                        "Date.<init>()",
                        "Random.<init>(long)",
                        "ThreadLocalRandom.current()"),
                breaks("unmarked", NameRules::packagesAreNullMarked, "broken.unmarked lacks a package-info"),
                breaks("words", NameRules::noEmptyWordsInClassNames, "ReelHelper", "AbstractReel", "ReceivedEvent"),
                breaks("words", NameRules::noEmptyWordsInPackageNames, "is named [util]"),
                breaks("untested", TestRules::testClassesAreRun, "ReelChecks has tests and is never run"),
                breaks("untested", TestRules::disabledTestsNameTheirIssue, "a_test_switched_off() is switched off"));
    }

    private static String report(ArchRule rule, JavaClasses classes) {
        EvaluationResult result = rule.evaluate(classes);
        return result.hasViolation() ? result.getFailureReport().toString() : "";
    }

    private static JavaClasses classes(String base) {
        return ALL.that(JavaClass.Predicates.resideInAPackage(base + ".."));
    }

    @ParameterizedTest(name = "{0} {index}")
    @MethodSource("rules")
    void a_rule_fails_on_the_class_that_breaks_it(
            String base, Function<String, ArchRule> rule, List<String> complaints) {
        assertThat(report(rule.apply(base), classes(base))).contains(complaints);
    }

    @ParameterizedTest(name = "{0} {index}")
    @MethodSource("rules")
    void a_rule_holds_on_the_service_that_keeps_it(String base, Function<String, ArchRule> rule) {
        // The kernel rules are for packages without Spring or fractions; the contract is such a one.
        String kept = base.endsWith("kernel") ? SOUND + ".contract" : SOUND;

        assertThat(report(rule.apply(kept), classes(kept))).isEmpty();
    }

    /** A rule that may find nothing says so itself: services without shells, and modules without features. */
    @ParameterizedTest(name = "{0} {index}")
    @MethodSource("rules")
    void a_rule_that_finds_nothing_fails(String base, Function<String, ArchRule> rule) {
        ArchRule onNothing = rule.apply("org.bandtrail.testing.nowhere");
        boolean mayFindNothing = base.endsWith("shells") || base.endsWith("circle");
        JavaClasses some = classes(SOUND + ".contract");

        if (mayFindNothing) {
            assertThat(report(onNothing, some)).isEmpty();
        } else {
            assertThatThrownBy(() -> onNothing.evaluate(some)).hasMessageContaining("failed to check any classes");
        }
    }

    @Test
    void what_is_allowed_is_not_reported() {
        assertThat(report(ChanceRule.timeAndChanceAreGiven(BROKEN + "chance"), classes(BROKEN + "chance")))
                .doesNotContain("java.time.Clock)")
                .doesNotContain("nanoTime")
                .doesNotContain("fromString");
        assertThat(report(TestRules.disabledTestsNameTheirIssue(BROKEN + "untested"), classes(BROKEN + "untested")))
                .doesNotContain("a_test_that_says_why");
        assertThat(report(TestRules.testClassesAreRun(BROKEN + "untested"), classes(BROKEN + "untested")))
                .doesNotContain("ReelSuite");
    }

    @Test
    void a_class_that_no_history_depends_on_may_make_chance() {
        assertThat(report(
                        ChanceRule.timeAndChanceAreGiven(BROKEN + "chance", Set.of("Other")),
                        classes(BROKEN + "chance")))
                .contains("Reel.made()");
        assertThat(report(
                        ChanceRule.timeAndChanceAreGiven(BROKEN + "chance", Set.of("Reel")),
                        classes(BROKEN + "chance")))
                .isEmpty();
    }

    @Test
    void the_one_line_for_modules_reports_all_broken_rules_together() {
        // The rules look at what is shipped; of this module that is the test library itself.
        assertThatThrownBy(() -> HouseRules.check("org.bandtrail.testing"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("house rules are broken below [org.bandtrail.testing]")
                .hasMessageContaining("9. ")
                .hasMessageContaining("12. ");
        assertThatThrownBy(() -> HouseRules.checkWithoutFeatures("org.bandtrail.nowhere"))
                .hasMessageContaining("would check nothing");
    }

    @Test
    void the_kernel_keeps_the_house_rules() {
        HouseRules.checkKernel("org.bandtrail.kernel");
    }
}
