/** What verbs and nouns of the trade mean with their arguments: frames, one table for all languages. */
@NullMarked
package org.drillwright.meaning;

import org.jspecify.annotations.NullMarked;
