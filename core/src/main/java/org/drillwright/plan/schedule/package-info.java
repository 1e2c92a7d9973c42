/** A term planned: what each group does in each class, who lacks what, and what changed since it was published. */
@NullMarked
package org.drillwright.plan.schedule;

import org.jspecify.annotations.NullMarked;
