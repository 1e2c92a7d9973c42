/** How the two stand in a count as it was played: bodies, blades and the lines that matter, before anything is drawn. */
@NullMarked
package org.drillwright.print.pose;

import org.jspecify.annotations.NullMarked;
