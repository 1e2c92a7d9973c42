/** Plans that were printed: kept as they are, found by their marks, and what was really worked of them. */
@NullMarked
package org.drillwright.plan.kept;

import org.jspecify.annotations.NullMarked;
