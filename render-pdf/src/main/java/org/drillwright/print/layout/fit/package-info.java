/** Where things stand on a card and how large its type is: grids, scales, sides, and the least that can be read. */
@NullMarked
package org.drillwright.print.layout.fit;

import org.jspecify.annotations.NullMarked;
