package org.drillwright.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.source.SourceFile;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Where somebody writes, marked by a bar; the way to it is read off the indents by hand (YAML 1.2.2, 6.1, 8.2). */
class CursorTest {

    /**
     * A text in which a bar stands for the cursor.
     *
     * @param where the way, with an equals sign in front of what stands there of a value, a question mark for a key
     */
    private record Case(String text, String where, Set<String> siblings) {
        Case(String text, String where) {
            this(text, where, Set.of());
        }
    }

    private static final Stream<Case> CASES = Stream.of(
            new Case("le|", "?le"),
            new Case("title: Salute\nle|\nform: solo", "?le", Set.of("title", "form")),
            new Case("level: |", "level="),
            new Case("level:|", "level="),
            new Case("level: be|ginner # first", "level=beginner"),
            new Case("needs: [a, b|]", "needs/1=b"),
            new Case("needs: [|", "needs/0="),
            new Case("needs: [a,|", "needs/1="),
            new Case("needs:\n  - a\n  - |", "needs/1?"),
            new Case("needs:\n- a\n- b|", "needs/1?b"),
            new Case("steps:\n  - leader: Ad|vance.\n    follower: Hold.", "steps/0/leader=Advance."),
            new Case("steps:\n  - leader: Advance.\n    fo|", "steps/0?fo", Set.of("leader")),
            new Case("steps:\n  - |\n    distance: lunge", "steps/0?", Set.of("distance")),
            new Case(
                    "steps:\n  - leader: A.\n  - leader: B.\n    |\n    distance: out\nclosing: C.",
                    "steps/1?",
                    Set.of("leader", "distance")),
            new Case("steps:\n  - leader:\n      say: Un.\n      means: |", "steps/0/leader/means="),
            new Case("note: >-\n  Waite: p. 76\n  lev|el: no key", "note=level: no key"),
            new Case("note: >-\n  Waite.\nlev|", "?lev", Set.of("note")),
            new Case("\"a key\": 1\n'other': |", "other="),
            new Case("title: Parry: of quarte\nsets:\n  begin: {drills: []}\n  tr|", "sets?tr", Set.of("begin")),
            new Case("# level: x\nwea|", "?wea"),
            new Case("dates:\n  - {key: w1}\n  - {key: w2, away: [Bo, K|it], date: x}", "dates/1/away/1=Kit"),
            new Case("dates:\n  - {key: w1, aw|, date: x}", "dates/0?aw", Set.of("key", "date")),
            new Case("dates:\n  - {|", "dates/0?"),
            new Case("dates:\n  - {key: |", "dates/0/key="),
            new Case(
                    "dates:\n  - {date: 2026-12-09, begins: \"19:00\", no|: yes}",
                    "dates/0?no",
                    Set.of("date", "begins")),
            new Case("exam: {date: x, drills: [a, b], wo|}", "exam?wo", Set.of("date", "drills")),
            new Case("settings:\n  \"a, b\": {must: ye|s, rounds: 1}", "settings/a, b/must=yes"),
            new Case("away: [\"O'Neill, Bo\", K|", "away/1=K"));

    @TestFactory
    Stream<DynamicTest> cursors() {
        return CASES.map(one -> DynamicTest.dynamicTest(one.text().replace('\n', '⏎'), () -> {
            SourceFile file = new SourceFile("", one.text().replace("|", ""));
            Cursor cursor = Cursor.at(file, one.text().indexOf('|'));
            assertEquals(one.where(), cursor.path().text() + (cursor.onKey() ? "?" : "=") + file.slice(cursor.word()));
            if (!one.siblings().isEmpty()) {
                assertEquals(one.siblings(), cursor.siblings());
            }
        }));
    }
}
