/** How fast drills are read, played and judged. */
@NullMarked
package org.drillwright.bench;

import org.jspecify.annotations.NullMarked;
