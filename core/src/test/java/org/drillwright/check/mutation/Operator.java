package org.drillwright.check.mutation;

import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A way of spoiling a drill.
 *
 * @param name in one word or two
 * @param spoils what it does, and where it fits
 * @param harmless when what it makes is still a correct drill; stated before anything was tried
 * @param noticed which findings notice it, and why those
 * @param mutants all that it makes of a drill
 */
record Operator(String name, String spoils, String harmless, String noticed, Function<Scene, Stream<Mutant>> mutants) {}
