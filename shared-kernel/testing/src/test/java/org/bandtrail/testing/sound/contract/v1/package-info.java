/**
 * What the service in miniature tells others. It keeps all house rules. Nothing else uses it.
 */
@NullMarked
package org.bandtrail.testing.sound.contract.v1;

import org.jspecify.annotations.NullMarked;
