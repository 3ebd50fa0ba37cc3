/**
 * Pages for setting a programme up: items with their measures, depots with their bins, crews with their people, and
 * vehicles. Only the depot and the lead see them. Who the people are is kept by the lead under People; here they are
 * put into crews.
 */
@NullMarked
package org.bandtrail.frontdesk.setup;

import org.jspecify.annotations.NullMarked;
