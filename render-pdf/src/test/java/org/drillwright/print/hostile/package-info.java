/** The program and files that mean no good. */
@NullMarked
package org.drillwright.print.hostile;

import org.jspecify.annotations.NullMarked;
