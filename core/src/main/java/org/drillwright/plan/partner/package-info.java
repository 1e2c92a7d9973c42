/** Two who train outside the class: who suits whom, and what the two can work on. */
@NullMarked
package org.drillwright.plan.partner;

import org.jspecify.annotations.NullMarked;
