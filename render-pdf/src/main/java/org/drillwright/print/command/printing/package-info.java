/** From chosen drills to a file of cards, or to the reasons why there is none. */
@NullMarked
package org.drillwright.print.command.printing;

import org.jspecify.annotations.NullMarked;
