/** The trade's terms as they are said to people in each language; what drills are read and told by is in {@code reading}. */
@NullMarked
package org.drillwright.terms;

import org.jspecify.annotations.NullMarked;
