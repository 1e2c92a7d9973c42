/**
 * What holds whatever comes in, tried on the inputs that are kept in {@code src/fuzz/corpus} by {@link
 * org.drillwright.fuzz.CorpusTest}, and on inputs that are looked for in the profile deep (see {@code docs/fuzzing.md}).
 */
package org.drillwright.fuzz;
