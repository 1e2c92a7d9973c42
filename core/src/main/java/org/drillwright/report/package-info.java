/** Findings as text, as lines and as JSON. */
@NullMarked
package org.drillwright.report;

import org.jspecify.annotations.NullMarked;
