/**
 * The people who work with Bandtrail: their names, phones, roles and how they sign in. This is the only place in the
 * house with personal data, an ordinary table whose rows can be erased; every event elsewhere knows a person only as
 * an identity such as P-07. A person reads in the units and the theme chosen here.
 */
@NullMarked
package org.bandtrail.frontdesk.people;

import org.jspecify.annotations.NullMarked;
