/** A fencer's body and blade in three dimensions, in metres, and how they are seen on paper. */
@NullMarked
package org.drillwright.print.pose.body;

import org.jspecify.annotations.NullMarked;
