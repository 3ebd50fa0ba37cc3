/**
 * Site-installs: where bands hang. It keeps the registers of sites and trees, proposes what to cut, imports
 * inventories and takes down what crews fitted. Each package is a feature; {@code published} and {@code received} are
 * the only doors to the other services. What a crew did is a fact and never refused; begin with {@code bands}.
 */
@NullMarked
package org.bandtrail.siteinstalls;

import org.jspecify.annotations.NullMarked;
