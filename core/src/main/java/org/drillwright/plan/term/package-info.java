/** A term as it is asked for: its days, its groups, its exam. */
@NullMarked
package org.drillwright.plan.term;

import org.jspecify.annotations.NullMarked;
