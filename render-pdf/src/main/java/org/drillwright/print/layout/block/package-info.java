/** The parts that a card is put together from, each set as a box. */
@NullMarked
package org.drillwright.print.layout.block;

import org.jspecify.annotations.NullMarked;
