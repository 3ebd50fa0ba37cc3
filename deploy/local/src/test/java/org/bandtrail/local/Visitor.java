package org.bandtrail.local;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import org.assertj.core.api.Assertions;

/** One person in front of one browser window, in the words of the journey. */
final class Visitor {
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final int PAUSE_MS = 250;
    private final Chromium chromium;
    private final Page page;
    private final URI desk;

    Visitor(Chromium chromium, Page page, URI desk) {
        this.chromium = chromium;
        this.page = page;
        this.desk = desk;
    }

    /** Opens a page and has it checked. */
    void opens(String path) {
        page.navigate(desk + path);
        chromium.check(page);
    }

    /** Writes into the field of this selector. */
    void writes(String field, String text) {
        page.fill(field, text);
    }

    /** Chooses a value of a list. */
    void chooses(String list, String value) {
        page.selectOption(list, value);
    }

    /** Ticks a box or a radio button of this name and value. */
    void ticks(String name, String value) {
        page.check("input[name='%s'][value='%s']".formatted(name, value));
    }

    /** Picks a file. */
    void picks(String field, Path file) {
        page.setInputFiles(field, file);
    }

    /** Presses the button of this name; the page that follows is checked. */
    void presses(String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
        page.waitForLoadState();
        chromium.check(page);
    }

    /** Follows the first link of this name; the page that follows is checked. */
    void follows(String link) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(link).setExact(true))
                .first()
                .click();
        page.waitForLoadState();
        chromium.check(page);
    }

    /** Asserts that the page shows this text. */
    void sees(String text) {
        Assertions.assertThat(shown()).as(page.url()).contains(text);
    }

    /** Opens the page again until it shows this text: what one service tells another takes a moment. */
    void seesSoon(String path, String text) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        page.navigate(desk + path);
        while (!shown().contains(text) && System.nanoTime() < end) {
            page.waitForTimeout(PAUSE_MS);
            page.navigate(desk + path);
        }
        chromium.check(page);
        sees(text);
    }

    /** The value of a field. */
    String value(String field) {
        return page.inputValue(field);
    }

    /** The last part of the path, for example the identity of what was just made. */
    String lastOfPath() {
        String path = URI.create(page.url()).getPath();
        return path.substring(path.lastIndexOf('/') + 1);
    }

    /** Whether a link of this name is on the page. */
    boolean canFollow(String link) {
        Locator found = page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(link));
        return found.count() > 0;
    }

    private String shown() {
        return page.innerText("main").replaceAll("\\s+", " ");
    }
}
