/** Perfect matchings of least weight: the only user of the graph library. */
@NullMarked
package org.drillwright.plan.match;

import org.jspecify.annotations.NullMarked;
