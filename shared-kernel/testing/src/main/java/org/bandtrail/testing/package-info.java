/**
 * Test libraries that every module uses and none ships: random histories with shrinking, golden files of stored events,
 * one PostgreSQL server for all tests of a build, clocks that stand still, house rules over byte code and tidiness of
 * the tree. What stands here is public because other modules call it; everything else is package-private. A failure
 * message says what was found, where, and what to do about it, because the person who reads it is usually in the middle
 * of something else. Nothing here depends on a service or on the event store: their annotations are found by name.
 */
@NullMarked
package org.bandtrail.testing;

import org.jspecify.annotations.NullMarked;
