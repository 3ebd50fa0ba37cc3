/**
 * A crew is the people who go out together from one depot. Custody of material is always a person's, never a crew's, so
 * that there is somebody to ask. Only pseudonymous identities stand here; names live in an erasable table of the front
 * desk. Wishes: form a crew, change who is in it.
 */
@NullMarked
package org.bandtrail.supplystock.crews;

import org.jspecify.annotations.NullMarked;
