/** Tables of rounds worked on as numbers: their costs, the methods that make them, and bounds that no table can pass. */
@NullMarked
package org.drillwright.plan.rounds;

import org.jspecify.annotations.NullMarked;
