/**
 * Waste bags and the loads they leave with. What is in a bag follows from what bands tell, in the same transaction;
 * when a bag leaves, its contents move to the load, and contents told late for a time before it left move on at once.
 * Everything is a fact: also an unknown bag, an empty one, and one that had already gone are accepted, with a flag.
 */
@NullMarked
package org.bandtrail.inspections.bags;

import org.jspecify.annotations.NullMarked;
