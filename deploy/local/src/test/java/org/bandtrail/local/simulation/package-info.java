/**
 * The material law over the whole house. Random histories go in through the services' front doors on a real PostgreSQL,
 * and an auditor who was told of every step, and knows nothing of the services' code, predicts where everything must
 * be. What the services say at the end has to agree to the millimetre, and the audit has to read zero.
 */
@NullMarked
package org.bandtrail.local.simulation;

import org.jspecify.annotations.NullMarked;
