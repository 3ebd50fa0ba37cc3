/**
 * Tests of the doors through which the demo goes in. The identity of a row's command has the layout of the RFC that defines
 * it, the same row has the same one, and another row has another. The doors themselves are tried with every load of the
 * season.
 */
@NullMarked
package org.bandtrail.local.doors;

import org.jspecify.annotations.NullMarked;
