package org.bandtrail.testing;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;

/**
 * One checked-in JSON text of something that was stored or published. The file name says what and which revision:
 * {@code <stored name>.<revision>.json}, or {@code <stored name>.<revision>-<variant>.json} for a second example of the
 * same revision. In the samples of a contract the revision is the number of the sample.
 *
 * @param fileName without folders, for example {@code reel.received.1.json}
 * @param storedName for example {@code reel.received}
 * @param revision for example {@code 1}
 * @param text as checked in
 */
public record GoldenFile(String fileName, String storedName, String revision, String text) {
    private static final Pattern NAME = Pattern.compile(
            "(?<name>[a-z0-9-]+(\\.[a-z0-9-]+)*)\\.(?<revision>\\d+)" + "(-(?<variant>[a-z0-9-]+))?\\.json");

    static GoldenFile named(String fileName, String text) {
        Matcher matcher = NAME.matcher(fileName);
        if (!matcher.matches()) {
            throw new AssertionError(
                    "Golden file [%s] is not named <stored name>.<revision>.json, such as reel.received.1.json."
                            .formatted(fileName));
        }
        return new GoldenFile(fileName, matcher.group("name"), matcher.group("revision"), text);
    }

    /** The text as a tree; an assertion error that names the file if it is not JSON. */
    public JsonNode json() {
        return GoldenJson.read(text, fileName);
    }

    /** So that a parameterised test shows the file and not its content. */
    @Override
    public String toString() {
        return fileName;
    }
}
