package org.bandtrail.testing;

import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.springframework.modulith.core.ApplicationModule;
import org.springframework.modulith.core.ApplicationModules;

/**
 * Spring Modulith's view of a service: each package below the application class is a module, and modules may not depend
 * on each other in a circle nor reach below another's package. Features are flat, so there is no below; if somebody
 * nests packages, this says so, while {@link HouseRules} sees slices only. The contract is left out: it has a package
 * per version on purpose, and {@link HouseRules} guards its door.
 */
public final class Modules {

    private Modules() {}

    /**
     * Verifies the modules of a service.
     *
     * @param application the class that starts it, in the package above its features
     * @return the names of the modules, so that a test can say that its features are among them
     * @throws AssertionError if there is no module, or the modules reach into each other
     */
    public static List<String> verify(Class<?> application) {
        return verify(application, new ImportOption.DoNotIncludeTests());
    }

    static List<String> verify(Class<?> application, ImportOption wanted) {
        ApplicationModules modules =
                ApplicationModules.of(application, place -> wanted.includes(place) && !place.contains("/contract/"));
        List<String> names = modules.stream()
                .map(ApplicationModule::getIdentifier)
                .map(Object::toString)
                .sorted()
                .toList();
        if (names.isEmpty()) {
            throw new AssertionError("There is no package below %s to be a module.".formatted(application.getName()));
        }
        var violations = modules.detectViolations();
        if (violations.hasViolations()) {
            throw new AssertionError("Modules below %s:%n%s".formatted(application.getName(), violations.getMessage()));
        }
        return names;
    }
}
