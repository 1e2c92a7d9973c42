/** The words of a language, as data: how they are cut, spelt, inflected and counted. Knows no sentence and no fencing. */
@NullMarked
package org.drillwright.lexicon;

import org.jspecify.annotations.NullMarked;
