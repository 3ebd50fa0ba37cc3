/**
 * A bin is a marked shelf place of a depot; what lies in it is part of what the depot has. Putting something into a bin
 * moves it there from wherever in the same depot the books have it. Wishes: mark a bin, put something into one, take it out
 * of the bins. Refused if the bin is not marked or the depot does not have the thing.
 */
@NullMarked
package org.bandtrail.supplystock.bins;

import org.jspecify.annotations.NullMarked;
