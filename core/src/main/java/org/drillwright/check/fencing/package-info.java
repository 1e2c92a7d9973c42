/** Rules: what only the played phrase shows. */
@NullMarked
package org.drillwright.check.fencing;

import org.jspecify.annotations.NullMarked;
