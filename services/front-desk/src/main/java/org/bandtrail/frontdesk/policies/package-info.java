/**
 * Pages of the policy by which bands are cut and hung, and of the kinds of devices. Every value opens into its source and
 * reason; two versions are laid side by side; a new version begins from one that exists and is asked about before it is
 * published. What a value means, what is unusual and what a device takes is for site-installs to say.
 */
@NullMarked
package org.bandtrail.frontdesk.policies;

import org.jspecify.annotations.NullMarked;
