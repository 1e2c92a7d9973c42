/** The people of a school, and what an instructor asks for one class: plain values. */
@NullMarked
package org.drillwright.plan.roster;

import org.jspecify.annotations.NullMarked;
