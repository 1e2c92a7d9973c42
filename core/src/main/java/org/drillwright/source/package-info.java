/** The text of a file, spans in it, and findings with their place. Stands on nothing. */
@NullMarked
package org.drillwright.source;

import org.jspecify.annotations.NullMarked;
