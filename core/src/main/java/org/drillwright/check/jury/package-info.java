/** All rules together: which are in force, and what they find. */
@NullMarked
package org.drillwright.check.jury;

import org.jspecify.annotations.NullMarked;
