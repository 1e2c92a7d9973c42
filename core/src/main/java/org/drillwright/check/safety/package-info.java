/** Rules: what keeps people whole. */
@NullMarked
package org.drillwright.check.safety;

import org.jspecify.annotations.NullMarked;
