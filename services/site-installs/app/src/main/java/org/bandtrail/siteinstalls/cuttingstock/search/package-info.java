/**
 * The search behind {@link org.bandtrail.siteinstalls.cuttingstock}, on whole numbers only: pieces of equal length are
 * one kind, reels are numbers. Plans are made by filling reels (first fit, sums that reach a length exactly), bettered
 * by emptying a few reels and filling them anew, and held against a bound from a linear program whose columns are
 * priced exactly. Floating point only proposes: every bound and every plan is worked out again in whole numbers. The
 * methods are those of the literature on cutting stock: Gilmore and Gomory 1961 (doi:10.1287/opre.9.6.849) for
 * columns, Farley 1990 (doi:10.1287/opre.38.5.922) for safe bounds before the columns are complete.
 */
@NullMarked
package org.bandtrail.siteinstalls.cuttingstock.search;

import org.jspecify.annotations.NullMarked;
