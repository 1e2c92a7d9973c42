/** Rounds of partners: closed forms that a class can walk, exact and stepwise search, bounds, and reasons. */
@NullMarked
package org.drillwright.plan.pair;

import org.jspecify.annotations.NullMarked;
