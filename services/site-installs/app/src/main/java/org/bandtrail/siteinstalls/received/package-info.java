/**
 * What this service hears from the others, one translator for each. A translator turns a contract event into a
 * command or a row, in the transaction of the inbox, and decides nothing. Only this package sees foreign contracts;
 * what is of no use here is passed over by name, so that the exchange can count it.
 */
@NullMarked
package org.bandtrail.siteinstalls.received;

import org.jspecify.annotations.NullMarked;
