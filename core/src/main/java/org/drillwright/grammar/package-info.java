/** The constructions of a language, as data, and the chart that finds them in a sentence. Knows no fencing. */
@NullMarked
package org.drillwright.grammar;

import org.jspecify.annotations.NullMarked;
