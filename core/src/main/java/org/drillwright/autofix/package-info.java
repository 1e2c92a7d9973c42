/** Mends in a drill's own text what has just one right answer. */
@NullMarked
package org.drillwright.autofix;

import org.jspecify.annotations.NullMarked;
