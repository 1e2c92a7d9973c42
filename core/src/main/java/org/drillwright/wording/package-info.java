/** What is said to people, in the language that they read: messages, and the files of words that they are made from. */
@NullMarked
package org.drillwright.wording;

import org.jspecify.annotations.NullMarked;
