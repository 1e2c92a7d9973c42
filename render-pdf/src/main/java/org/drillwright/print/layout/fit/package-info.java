/** How much room there is and how large the type may be: areas, columns, scales, pages, and the least that can be read. */
@NullMarked
package org.drillwright.print.layout.fit;

import org.jspecify.annotations.NullMarked;
