/** How many lanes a hall holds. */
@NullMarked
package org.drillwright.plan.hall;

import org.jspecify.annotations.NullMarked;
