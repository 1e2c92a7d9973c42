/** The pages that are made from the program itself, so that they cannot go stale. */
@NullMarked
package org.drillwright.docs;

import org.jspecify.annotations.NullMarked;
