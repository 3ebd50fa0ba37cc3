/**
 * Measures the cutting planner on 200 jobs that follow from their seeds: five classes, 50 to 1,000 pieces, 10 to 200
 * part reels. Each plan is held against its own bound, and against first-fit-decreasing, written here a second time
 * without the planner's code, and against a general solver in a process of its own where the platform has one. The jobs
 * stand in
 * {@link org.bandtrail.benchmark.cutting.JobClass}; the table goes into DEVELOPERS.md.
 */
@NullMarked
package org.bandtrail.benchmark.cutting;

import org.jspecify.annotations.NullMarked;
