package org.drillwright.translation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import org.drillwright.meaning.ActionText;
import org.drillwright.notation.Action;
import org.drillwright.notation.Utterance;
import org.drillwright.reading.TurnReader;

/** What is possible is said in each language in words that are read in it as just that. */
class RoundTripProperties {

    private static final TurnReader READER = TurnReader.standard();

    private static final List<List<Action>> OPEN = Open.toDepthTwo();

    /** Made when it is asked for: there are some thousands of states to look at. */
    private static List<List<Action>> everything() {
        Set<List<Action>> all = new LinkedHashSet<>(OPEN);
        all.addAll(Open.fromEveryGuard());
        return List.copyOf(all);
    }

    private static boolean comesBack(List<Action> actions, String tag) {
        Utterance read = READER.read(READER.said(actions, tag), tag);
        return read.isRead() && read.actions().equals(actions);
    }

    private static String told(List<Action> actions, String tag) {
        String said = READER.said(actions, tag);
        return tag + ": " + actions.stream().map(ActionText::of).toList() + " -> " + said + " -> "
                + READER.read(said, tag).actions().stream().map(ActionText::of).toList();
    }

    @Provide
    Arbitrary<List<Action>> open() {
        return Arbitraries.of(OPEN);
    }

    @Provide
    Arbitrary<String> tags() {
        return Arbitraries.of(READER.tags());
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    void what_is_open_comes_back(@ForAll("open") List<Action> actions, @ForAll("tags") String tag) {
        assertTrue(comesBack(actions, tag), () -> told(actions, tag));
    }

    @Tag("deep")
    @Property(tries = 1)
    void all_that_is_open_comes_back() {
        List<List<Action>> open = everything();
        assertTrue(open.size() > OPEN.size(), () -> "only " + open.size());
        List<String> lost = new ArrayList<>();
        for (String tag : READER.tags()) {
            open.stream()
                    .filter(actions -> !comesBack(actions, tag))
                    .map(actions -> told(actions, tag))
                    .forEach(lost::add);
        }
        assertEquals(List.of(), lost, () -> lost.size() + " of " + open.size());
    }
}
