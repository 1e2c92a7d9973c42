/** The commands that put cards on paper, alone or in packets, and tell which card is in the hand. */
@NullMarked
package org.drillwright.print.command.cards;

import org.jspecify.annotations.NullMarked;
