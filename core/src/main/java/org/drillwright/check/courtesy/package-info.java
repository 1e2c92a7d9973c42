/** Rules: salutes. */
@NullMarked
package org.drillwright.check.courtesy;

import org.jspecify.annotations.NullMarked;
