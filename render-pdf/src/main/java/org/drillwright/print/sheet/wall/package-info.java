/** One evening on one sheet for the wall: names by rounds, or two lines that walk; and the same in slips for the hand. */
@NullMarked
package org.drillwright.print.sheet.wall;

import org.jspecify.annotations.NullMarked;
