/** Perfect matchings of least weight and flows of least cost: the only user of the graph library. */
@NullMarked
package org.drillwright.plan.match;

import org.jspecify.annotations.NullMarked;
