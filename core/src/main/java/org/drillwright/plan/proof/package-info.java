/** Looks after what is claimed of a plan, by code of its own: it knows none of the classes that find plans. */
@NullMarked
package org.drillwright.plan.proof;

import org.jspecify.annotations.NullMarked;
