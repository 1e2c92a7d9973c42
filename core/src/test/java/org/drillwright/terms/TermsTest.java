package org.drillwright.terms;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Arrays;
import java.util.stream.Stream;
import org.drillwright.model.Language;
import org.drillwright.model.Side;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Line;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.notation.Target;
import org.drillwright.wording.Message;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A term that was added to the trade's values has a word in every language, before anybody is told of it. */
class TermsTest {

    static Stream<Message> terms() {
        return Stream.of(
                        Arrays.stream(Side.values()).map(Terms::of),
                        Arrays.stream(Line.values()).map(Terms::of),
                        Arrays.stream(Position.values()).map(Terms::of),
                        Arrays.stream(Measure.values()).map(Terms::of),
                        Arrays.stream(Target.values()).map(Terms::of),
                        Arrays.stream(Weapon.values()).map(Terms::of),
                        Arrays.stream(ParryKind.values()).map(Terms::of),
                        Arrays.stream(Path.values()).map(Terms::of),
                        Language.all().stream().map(Terms::of))
                .flatMap(terms -> terms);
    }

    @ParameterizedTest
    @MethodSource("terms")
    void every_value_has_a_word_in_every_language(Message term) {
        assertAll(Language.all().stream()
                .map(language -> () -> assertFalse(term.in(language.locale()).isBlank(), language::word)));
    }
}
