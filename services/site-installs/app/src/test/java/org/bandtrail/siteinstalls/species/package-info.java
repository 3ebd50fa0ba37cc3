/**
 * Tests of the book of species. They look at what must hold of the data whatever edition it is. Names people write are
 * tried in the spellings lists come with.
 */
@NullMarked
package org.bandtrail.siteinstalls.species;

import org.jspecify.annotations.NullMarked;
