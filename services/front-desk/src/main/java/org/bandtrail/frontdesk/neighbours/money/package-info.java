/**
 * Money: spend, budgets and grants, invoices, freight and duty, the books, months and the journal, as supply-stock tells
 * them. One client for each area asks and passes commands on; beside it stand the records it answers with. Amounts are
 * whole minor units with their currency.
 */
@NullMarked
@NamedInterface("money")
package org.bandtrail.frontdesk.neighbours.money;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
