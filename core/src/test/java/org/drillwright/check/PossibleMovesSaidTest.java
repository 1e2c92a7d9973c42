package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Possible;
import org.drillwright.reading.TurnReader;
import org.drillwright.school.SchoolFolder;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is open in a phrase of the example drills can be told in words that are read as just that. */
class PossibleMovesSaidTest {

    private static Set<List<Action>> open() throws IOException {
        Set<List<Action>> all = new LinkedHashSet<>();
        for (SchoolFolder.Entry entry :
                SchoolFolder.open(Path.of("..", "drills")).entries()) {
            entry.subject().ifPresent(subject -> {
                for (Count count : subject.replay().counts()) {
                    Possible.in(count.end(), subject.replay().setting()).stream()
                            .map(open -> open.move().parts().stream()
                                    .map(Clause::action)
                                    .toList())
                            .forEach(all::add);
                }
            });
        }
        return all;
    }

    static Stream<String> tags() {
        return TurnReader.standard().tags().stream();
    }

    @ParameterizedTest
    @MethodSource("tags")
    void a_move_that_is_open_is_told_in_words_that_are_read_as_just_that(String tag) throws IOException {
        TurnReader reader = TurnReader.standard();
        Set<List<Action>> open = open();
        assertTrue(open.size() > 20, () -> "only " + open.size());
        for (List<Action> actions : open) {
            String said = reader.said(actions, tag);
            assertEquals(actions, reader.read(said).actions(), said);
        }
    }
}
