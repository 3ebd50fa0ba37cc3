/**
 * A vehicle can carry stock that is nobody's custody yet, or no longer: a truck loaded the evening before. Wishes: register
 * a vehicle, load it from a depot, unload it at a depot or into a person's hands. What is on it counts as stock and is shown
 * on the trail, so a reel that went home in a truck is in the books as on that truck.
 */
@NullMarked
package org.bandtrail.supplystock.vehicles;

import org.jspecify.annotations.NullMarked;
