/**
 * Contacts: how to reach the people who may give consent. Names, phones and addresses live in one ordinary table and
 * nowhere else, so that they can be erased for good when somebody asks. Events and read models carry the pseudonym,
 * which goes on to tell that it was the same person, without telling who.
 */
@NullMarked
package org.bandtrail.siteinstalls.contacts;

import org.jspecify.annotations.NullMarked;
