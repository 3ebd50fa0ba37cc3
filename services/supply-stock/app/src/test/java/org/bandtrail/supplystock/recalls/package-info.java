/**
 * Tests of {@code recalls}. They run the service on a real PostgreSQL and go through the front door, as a client does. What
 * the books say afterwards is asked over HTTP too, and the audit has to read zero.
 */
@NullMarked
package org.bandtrail.supplystock.recalls;

import org.jspecify.annotations.NullMarked;
