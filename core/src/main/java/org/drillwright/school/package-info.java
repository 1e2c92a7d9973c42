/** Opens a folder of drills: reads it, plays it and judges it; what most callers use. */
@NullMarked
package org.drillwright.school;

import org.jspecify.annotations.NullMarked;
