/**
 * What the office of the demo programme did: suppliers and orders, deliveries, transfers, counts, invoices, budgets, months
 * closed. It stands in {@code demo-data/office} as lines of JSON, one request each, with its moment, its person and a few
 * words on why. {@code Office} sends the lines through the services' HTTP doors at the moment they belong to.
 */
@NullMarked
package org.bandtrail.local.office;

import org.jspecify.annotations.NullMarked;
