/**
 * Tests of the office's script against a server that only records. They look at what is sent in which order and at which
 * moment, at what a line that cannot be read says, and at the refusal of a service. What the services make of the real
 * script is looked at when the whole season is loaded.
 */
@NullMarked
package org.bandtrail.local.office;

import org.jspecify.annotations.NullMarked;
