/** Measuring words and breaking them into lines, behind the interface of a typeface. Stands on {@code frame}. */
@NullMarked
package org.drillwright.print.text;

import org.jspecify.annotations.NullMarked;
