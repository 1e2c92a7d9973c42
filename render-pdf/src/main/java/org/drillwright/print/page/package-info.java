/** Whole pages of paragraphs, tables and figures, one under the other. Stands on frames, text and how lines are set. */
@NullMarked
package org.drillwright.print.page;

import org.jspecify.annotations.NullMarked;
