package org.drillwright.print.sheet.wall;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.roster.Naming;
import org.drillwright.tell.GroupWords;

/** Letters beside a place that tell who stands there besides a pair; those that were used are explained. */
final class Signs {

    /** Instead of the place of somebody who needs none. */
    static final String ALONE = "\u2013";

    private static final String THREE = "t";
    private static final String BOTH_NEW = "n";

    private final Naming names;
    private final Map<String, String> helpers = new LinkedHashMap<>();
    private final Map<String, String> explained = new LinkedHashMap<>();

    Signs(Naming names) {
        this.names = names;
    }

    /** The sign of a group; empty for a pair. */
    String of(Group group) {
        if (group.helper().isPresent()) {
            return helpers.computeIfAbsent(group.helper().get(), this::helper);
        }
        return switch (group.kind()) {
            case PAIR, HELPED, WATCHED -> "";
            case THREE ->
                explained(THREE, "three at this place: whoever leads first works with each of the" + " others in turn");
            case BOTH_NEW -> explained(BOTH_NEW, "both are new to the drill");
            case SOLO -> {
                explained(ALONE, "works alone");
                yield "";
            }
        };
    }

    void away() {
        explained("empty", "isn't there");
    }

    /** Each sign and what it means, in the order in which they came up. */
    Map<String, String> explained() {
        return explained;
    }

    /** The first letter of what the helper is called, or the next one that is free. */
    private String helper(String helper) {
        String called = GroupWords.helper(helper, names).replace("the ", "");
        String sign = Stream.concat(
                        called.toLowerCase(Locale.ROOT).codePoints().mapToObj(Character::toString),
                        IntStream.iterate('a', letter -> letter + 1).mapToObj(Character::toString))
                .filter(letter -> letter.matches("\\p{L}"))
                .filter(letter -> !letter.equals(THREE) && !letter.equals(BOTH_NEW) && !explained.containsKey(letter))
                .findFirst()
                .orElseThrow();
        return explained(sign, "with " + GroupWords.helper(helper, names));
    }

    private String explained(String sign, String meaning) {
        explained.put(sign, meaning);
        return sign;
    }
}
