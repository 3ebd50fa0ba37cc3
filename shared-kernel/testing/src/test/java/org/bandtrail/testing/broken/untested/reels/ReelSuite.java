package org.bandtrail.testing.broken.untested.reels;

import org.junit.jupiter.api.Test;

/** Breaks nothing: a suite that others inherit under a name the build runs. */
abstract class ReelSuite {
    @Test
    void a_test_that_others_inherit() {}
}
