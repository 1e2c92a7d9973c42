/** Plans told in words for a terminal, and as JSON for programs. */
@NullMarked
package org.drillwright.report.plan;

import org.jspecify.annotations.NullMarked;
