/** One class planned as a whole: what is wished, what fits, who works with whom, on which lanes. */
@NullMarked
package org.drillwright.plan.evening;

import org.jspecify.annotations.NullMarked;
