/**
 * Words set in boxes, boxes one under the other, and the pages that they fill: what cards, sheets, handouts and booklets are
 * all laid with. Stands on frames and text.
 */
@NullMarked
package org.drillwright.print.page;

import org.jspecify.annotations.NullMarked;
