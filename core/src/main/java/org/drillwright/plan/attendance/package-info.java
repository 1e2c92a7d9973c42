/** Who came to which classes, what they missed, and how likely they are to come. */
@NullMarked
package org.drillwright.plan.attendance;

import org.jspecify.annotations.NullMarked;
