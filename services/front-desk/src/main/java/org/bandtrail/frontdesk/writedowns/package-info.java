/**
 * Write-downs at the finance desk: the list of all with their reasons, and writing one down. Whoever writes down sees
 * what the reel or batch cost and says what it is still worth. What may be written down is for supply-stock to decide.
 */
@NullMarked
package org.bandtrail.frontdesk.writedowns;

import org.jspecify.annotations.NullMarked;
