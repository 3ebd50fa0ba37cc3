/**
 * The front desk: the web pages people work with. It signs people in, asks the services for what is known, shows it in
 * plain words, and passes what people did or wish on to the service that decides. No rule of the trade lives here; a
 * refusal or a question of a service is shown as it came, with what to do about it.
 */
@NullMarked
package org.bandtrail.frontdesk;

import org.jspecify.annotations.NullMarked;
