package org.bandtrail.testing.tidy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A small tidy tree in a folder of its own, for tests that make one thing of it untidy. */
abstract class TidyTree {
    static final String REEL = "services/stock/src/main/java/stock/reels/";

    @TempDir
    Path root;

    @BeforeEach
    void a_tidy_tree() throws IOException {
        write("README.md", """
                # Stock
                | folder | what is in it |
                |---|---|
                | `shared-kernel` | what all share |
                | `services/stock` | reels |

                [The kernel](shared-kernel/notes.md#units), [elsewhere](https://example.org/nowhere)
                """);
        write("pom.xml", "<include>**/*Test.java</include><include>**/*Journey.java</include>\n");
        write("shared-kernel/notes.md", "# Units\n");
        write(REEL + "Reel.java", "package stock.reels;\n\nrecord Reel(long mm) {}\n");
        write(REEL + "package-info.java", packageInfo("Reels. They have a length. It is whole."));
        write("services/stock/src/main/resources/db/stock/V010__reel.sql", "CREATE TABLE reel (mm bigint);\n");
        write("target/Made.java", "no Java at all, and made by the build\n");
        write("services/stock/target/Made.java", "x".repeat(500));
    }

    static String packageInfo(String text) {
        return "/**\n * %s\n */\n@NullMarked\npackage stock.reels;\n".formatted(text);
    }

    void write(String path, String text) throws IOException {
        Path file = root.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    List<String> complaints(String... exceptions) {
        return Tidy.complaints(root, List.of(exceptions));
    }

    void assertOnlyComplaint(String start, String part) {
        assertThat(complaints()).singleElement().asString().startsWith(start).contains(part);
    }
}
