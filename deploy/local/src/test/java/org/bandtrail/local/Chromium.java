package org.bandtrail.local;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The machine's own Chromium, driven by Playwright. Every page that is opened is checked by axe-core against WCAG 2.2 A
 * and AA and the contrast of 7:1; what it finds is kept with the address of the page.
 */
final class Chromium implements AutoCloseable {
    /** The browser deploy/test found, or where Debian's package puts it; nothing is downloaded. */
    static final Path PROGRAM = Path.of(System.getenv().getOrDefault("BANDTRAIL_CHROMIUM", "/usr/bin/chromium"));

    private static final List<String> RULES =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "wcag2aaa", "best-practice");
    private final Playwright playwright;
    private final Browser browser;
    private final URI desk;
    private final List<String> violations = new ArrayList<>();
    private final List<String> checked = new ArrayList<>();

    Chromium(URI desk) {
        this.desk = desk;
        this.playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        this.browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(PROGRAM)
                        .setArgs(List.of("--no-sandbox", "--disable-dev-shm-usage")));
    }

    static boolean isHere() {
        return Files.isExecutable(PROGRAM);
    }

    /** A window of its own, signed in as this person. */
    Visitor signedIn(String username, String password) {
        BrowserContext window = browser.newContext(
                new Browser.NewContextOptions().setViewportSize(1280, 900).setLocale("en-GB"));
        Visitor visitor = new Visitor(this, window.newPage(), desk);
        visitor.opens("/sign-in");
        visitor.writes("#username", username);
        visitor.writes("#password", password);
        visitor.presses("Sign in");
        return visitor;
    }

    /** Lets axe look at the page as it stands. */
    void check(Page page) {
        checked.add(URI.create(page.url()).getPath());
        for (Rule rule : new AxeBuilder(page).withTags(RULES).analyze().getViolations()) {
            rule.getNodes()
                    .forEach(node -> violations.add("%s: %s (%s) at %s"
                            .formatted(page.url(), rule.getHelp(), rule.getImpact(), node.getTarget())));
        }
    }

    /** Everything axe found so far, empty if every page is sound. */
    List<String> violations() {
        return violations;
    }

    /** Paths of the pages axe looked at. */
    List<String> checked() {
        return checked;
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
