/** Evenings that are walked: which drills one forming serves, how few formings do, who stands where, and what is read instead. */
@NullMarked
package org.drillwright.plan.walk;

import org.jspecify.annotations.NullMarked;
