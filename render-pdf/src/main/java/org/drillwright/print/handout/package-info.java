/** A packet for an assistant: a cover, the cards of a set on their sheets, a table to sign. */
@NullMarked
package org.drillwright.print.handout;

import org.jspecify.annotations.NullMarked;
