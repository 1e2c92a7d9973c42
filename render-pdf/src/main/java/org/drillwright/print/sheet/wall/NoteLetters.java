package org.drillwright.print.sheet.wall;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.roster.Naming;
import org.drillwright.register.History;

/** Letters beside a place that tell who stands there besides a pair; those that were used are explained. */
final class NoteLetters {

    /** Instead of the place of somebody who needs none. */
    static final String ALONE = "\u2013";

    private final Naming names;
    private final WallTexts words;
    private final String three;
    private final String bothNew;
    private final Map<String, String> helpers = new LinkedHashMap<>();
    private final Map<String, String> explained = new LinkedHashMap<>();

    NoteLetters(Naming names, WallTexts words) {
        this.names = names;
        this.words = words;
        this.three = words.text(WallText.SIGN_THREE);
        this.bothNew = words.text(WallText.SIGN_NEW);
    }

    /** The sign of a group; empty for a pair. */
    String of(Group group) {
        if (group.helper().isPresent()) {
            return helpers.computeIfAbsent(group.helper().get(), this::helper);
        }
        return switch (group.kind()) {
            case PAIR, HELPED, WATCHED -> "";
            case THREE -> explained(three, words.text(WallText.THREE));
            case BOTH_NEW -> explained(bothNew, words.text(WallText.BOTH_NEW));
            case SOLO -> {
                explained(ALONE, words.text(WallText.ALONE));
                yield "";
            }
        };
    }

    void away() {
        explained(words.text(WallText.SIGN_EMPTY), words.text(WallText.AWAY));
    }

    /** Each sign and what it means, in the order in which they came up. */
    Map<String, String> explained() {
        return explained;
    }

    /** The first letter of what the helper is called, or the next one that is free. */
    private String helper(String helper) {
        String called = ByName.called(helper, names, words);
        String sign = Stream.concat(
                        called.toLowerCase(words.locale()).codePoints().mapToObj(Character::toString),
                        IntStream.iterate('a', letter -> letter + 1).mapToObj(Character::toString))
                .filter(letter -> letter.matches("\\p{L}"))
                .filter(letter -> !letter.equals(three) && !letter.equals(bothNew) && !explained.containsKey(letter))
                .findFirst()
                .orElseThrow();
        return explained(
                sign,
                helper.equals(History.INSTRUCTOR)
                        ? words.text(WallText.WITH_INSTRUCTOR)
                        : words.text(WallText.WITH, names.of(helper)));
    }

    private String explained(String sign, String meaning) {
        explained.put(sign, meaning);
        return sign;
    }
}
