package org.bandtrail.testing.tidy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The whole repository is tidy, save what the list of exceptions names with a reason. */
class TidyTest {

    @Test
    void the_repository_is_tidy() throws IOException {
        Tidy.check(Files.readAllLines(Path.of("src/test/resources/tidy-exceptions.txt")));
    }
}
