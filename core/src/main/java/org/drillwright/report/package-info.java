/** Findings as text, as lines, as JSON and as SARIF. */
@NullMarked
package org.drillwright.report;

import org.jspecify.annotations.NullMarked;
