/**
 * A transfer brings stock from one depot or vehicle to another, in the hands of a named carrier. Both ends are confirmed:
 * somebody sends, somebody measures and counts what arrives; in between the stock is on its way and shown as such. What
 * arrives short is missing with the carrier, a discrepancy with a name; what arrives over the books is one too. Wishes: send,
 * call off. Fact: what arrived, which is never refused.
 */
@NullMarked
package org.bandtrail.supplystock.transfers;

import org.jspecify.annotations.NullMarked;
