/** What a file may hold, as JSON Schema 2020-12, made from the shapes that the readers ask for. */
@NullMarked
package org.drillwright.schema;

import org.jspecify.annotations.NullMarked;
