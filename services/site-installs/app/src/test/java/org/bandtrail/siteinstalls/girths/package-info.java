/**
 * Tests of girths. Conversions are compared with exact published factors, slips with what a crew would have meant. A
 * doubt is tested together with the value next to it that is believed.
 */
@NullMarked
package org.bandtrail.siteinstalls.girths;

import org.jspecify.annotations.NullMarked;
