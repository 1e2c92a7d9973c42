/** How long a lesson takes, which drills fit into it, and in which order. */
@NullMarked
package org.drillwright.plan.lesson;

import org.jspecify.annotations.NullMarked;
