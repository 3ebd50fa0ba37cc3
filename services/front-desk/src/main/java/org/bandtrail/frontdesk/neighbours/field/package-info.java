/**
 * The field: sites, trees and bands as site-installs tells them, visits and teardowns as inspections tells them. One
 * client for each service asks and passes commands on; beside it stand the records it answers with. Lengths are whole
 * millimetres, moments are UTC.
 */
@NullMarked
@NamedInterface("field")
package org.bandtrail.frontdesk.neighbours.field;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
