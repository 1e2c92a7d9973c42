/** A drill told count by count as it was played: what was read, how both stand, what became of each attack. */
@NullMarked
package org.drillwright.explain;

import org.jspecify.annotations.NullMarked;
