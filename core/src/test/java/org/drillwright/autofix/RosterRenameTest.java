package org.drillwright.autofix;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.School;
import org.drillwright.read.RosterReader;
import org.drillwright.source.SourceFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RosterRenameTest {

    private static final RosterReader READER = new RosterReader(School.DEFAULT, List.of("thrust"));

    private static Optional<String> renamed(String text, String old, String now) {
        return RosterRename.of(READER, new SourceFile("roster.yaml", text), old, now);
    }

    @Test
    void only_the_name_changes_and_the_old_one_is_kept_beside_it() {
        assertEquals("""
                # Ash is a remark, and stays.
                people:
                  - {name: Pippa, was: [Pip], level: beginner}   # since May
                  - name: "Bo"
                    apart: [Pippa, Ash]

                  - name: Ash
                assistants: [Cy]
                """, renamed("""
                        # Ash is a remark, and stays.
                        people:
                          - {name: Pip, level: beginner}   # since May
                          - name: "Bo"
                            apart: [Pip, Ash]

                          - name: Ash
                        assistants: [Cy]
                        """, "Pip", "Pippa").orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "people: [{name: Pip}] | people: [{name: Pippa, was: [Pip]}]",
                "people: [{name: Pip, was: [P]}] | people: [{name: Pippa, was: [P, Pip]}]",
                "people:\\n- name: 'Pip' # x\\n  level: beginner\\n | people:\\n- name: Pippa # x\\n  was: [Pip]\\n  level: beginner\\n",
                "people: [{name: Ash}]\\nassistants: [Pip]\\n | people: [{name: Ash}]\\nassistants: [Pippa]\\n"
            })
    void in_each_way_of_writing(String text, String wanted) {
        assertEquals(
                wanted.replace("\\n", "\n"),
                renamed(text.replace("\\n", "\n"), "Pip", "Pippa").orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"yes", "Zoé d'Arc", "a: b", "'\"x\\y'", "1", "#x", "null"})
    void a_name_is_read_back_as_it_was_said(String now) {
        String text = renamed("people: [{name: Pip}]\n", "Pip", now).orElseThrow();
        var roster = READER.read("roster.yaml", text.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow();
        assertEquals(List.of(now), roster.names());
        assertEquals(Map.of("Pip", now), roster.former());
    }

    @Test
    void back_to_a_name_of_before() {
        String text =
                renamed("people: [{name: Pippa, was: [Pip]}]\n", "Pippa", "Pip").orElseThrow();
        assertEquals("people: [{name: Pip, was: [Pip, Pippa]}]\n", text);
    }

    @Test
    void nothing_where_it_cannot_be_written() {
        assertEquals(Optional.empty(), renamed("people: [{name: Pip}, {name: Pippa}]\n", "Pip", "Pippa"));
        assertEquals(Optional.empty(), renamed("people: [{name: Pip\n", "Pip", "Pippa"));
    }
}
