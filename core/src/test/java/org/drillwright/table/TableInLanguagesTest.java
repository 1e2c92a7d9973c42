package org.drillwright.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;
import org.drillwright.wording.Message;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of a table's heading, in four languages: the grammar was looked at by eye, common practice, no source. */
class TableInLanguagesTest {

    /** Language; a table; what is said of its heading, a no-break space as {@code _}. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "fr | name;full name | Deux colonnes pourraient correspondre à «_nom_»_: «_name_» et «_full name_». "
                        + "Dites laquelle_: tables: {columns: {name: \"full name\"}} dans school.yaml.",
                "de | Vorname;Rufname | Zwei Spalten könnten für „Vorname“ stehen: „Vorname“ und „Rufname“. "
                        + "Angeben, welche: tables: {columns: {first-name: \"Rufname\"}} in school.yaml.",
                "it | name;foo;bar | Queste colonne sono state ignorate: «foo», «bar». Le colonne lette sono: «name».",
                "es | name;foo | Esta columna no se ha tenido en cuenta: «foo». Las columnas leídas son: «name».",
                "fr | name; | Cette colonne a été ignorée_: une sans en-tête. Les colonnes lues sont_: «_name_»."
            })
    void of_a_heading(String language, String heading, String said) {
        String text = heading + "\nx;x;x\n";
        CsvTable table = CsvTable.of(text);
        Findings findings = new Findings(new SourceFile("roster.csv", text));
        Heading read = Heading.of(table, List.of("name", "full-name", "first-name"), TableSettings.NONE);
        read.report("rule", findings);
        if (findings.list().isEmpty() || !findings.hasError()) {
            NameColumns.of(read, TableSettings.NONE, table, "rule", findings);
        }
        String words = findings.list().stream()
                .filter(finding ->
                        findings.list().size() == 1 || finding.severity().word().equals("error"))
                .findFirst()
                .orElseThrow()
                .words()
                .in(new Locale(language));
        assertEquals(said, words.replace('\u00a0', '_'));
    }

    /** A column has a name in every language, so that no sentence about it lacks its subject. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "fr", "it", "es", "de"})
    void every_field_has_a_name(String language) {
        List<String> named = TableWords.fields().stream()
                .map(field -> Message.of(Heading.class, "field." + field).in(new Locale(language)))
                .toList();
        assertEquals(named.size(), named.stream().distinct().count(), named::toString);
    }
}
