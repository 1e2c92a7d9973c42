/** Which drills of one group are new and which come again in each class of a term, in figures alone. */
@NullMarked
package org.drillwright.plan.course;

import org.jspecify.annotations.NullMarked;
