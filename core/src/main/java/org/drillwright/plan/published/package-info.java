/** Plans of terms that were published: kept as they are, found by their marks, one taking over from another. */
@NullMarked
package org.drillwright.plan.published;

import org.jspecify.annotations.NullMarked;
