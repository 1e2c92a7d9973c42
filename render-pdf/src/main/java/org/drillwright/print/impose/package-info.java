/** Cards on to sheets at their true size, with marks for cutting. Stands on {@code frame}. */
@NullMarked
package org.drillwright.print.impose;

import org.jspecify.annotations.NullMarked;
