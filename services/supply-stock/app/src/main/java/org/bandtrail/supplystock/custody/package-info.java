/**
 * What is in a person's care: what was handed out, what became of it, and what is still out, for any moment as it
 * happened and as it was known. Law: handed out = fitted + returned + scrapped + missing + elsewhere + still out, for
 * each reel, batch, kit and person, to the millimetre, from the events alone.
 *
 * <p>A kit is settled when nothing of it is out. A fact told late belongs to the kit that was out when it happened; it
 * changes that kit's figures and reopens it visibly. Nothing here decides anything.
 */
@NullMarked
package org.bandtrail.supplystock.custody;

import org.jspecify.annotations.NullMarked;
