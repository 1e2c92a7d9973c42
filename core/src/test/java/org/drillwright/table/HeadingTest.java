package org.drillwright.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.source.Finding;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of columns as clubs in several countries write them: common practice, no source. */
class HeadingTest {

    private static final List<String> FIELDS = Stream.concat(
                    NameColumns.FIELDS.stream(), Stream.of("level", "hand", "days", "away"))
            .toList();

    private static final TableSettings MEMBER = new TableSettings(Optional.empty(), Map.of("name", "Member"));

    /** The name in the second line, or what is said of the first. */
    private static String named(String text, TableSettings settings) {
        CsvTable table = CsvTable.of(text);
        Findings findings = new Findings(new SourceFile("roster.csv", text));
        Heading heading = Heading.of(table, FIELDS, settings);
        heading.report("heading", findings);
        Optional<NameColumns> names = NameColumns.of(heading, settings, table, "name", findings);
        List<Finding> errors = findings.list().stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .toList();
        return errors.isEmpty()
                ? names.orElseThrow().name(table.body().get(0))
                : errors.stream().map(finding -> finding.what().english()).collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '/',
            value = {
                "Name;Hand / Ash;left / Ash",
                "NAME,Level / Ash,beginner / Ash",
                "Full name;Hand / Ash Fenwick;left / Ash Fenwick",
                // French: the family's name is called just 'name'.
                "Nom;Prénom;Main / FENWICK;Ash;gaucher / Ash FENWICK",
                "Prénom;NOM / Ash;Fenwick / Ash Fenwick",
                // Italian: the person's own name is called so.
                "Cognome;Nome;Mano / Fenwick;Ash;mancino / Ash Fenwick",
                "Nome e cognome;Mano / x;y / No column is called 'name'. The first line is: 'Nome e cognome', 'Mano'.",
                // German, Spanish, and English with hyphens and capitals.
                "Nachname;Vorname / Fenwick;Ash / Ash Fenwick",
                "Name;Vorname / Fenwick;Ash / Ash Fenwick",
                "Nombre;Apellidos / Ash;Fenwick / Ash Fenwick",
                "LAST-NAME,First_Name / Fenwick,Ash / Ash Fenwick",
                // All three: the two parts say it for certain.
                "Name;First name;Last name / A. F.;Ash;Fenwick / Ash Fenwick",
                "Vorname / Ash / Ash",
                "Name;Member / Ash;yes / Two columns could be the name: 'Name' and 'Member'.",
                "Level;Stufe;Name / a;b;Ash / Two columns could be the level: 'Level' and 'Stufe'.",
                "name;hnad / Ash;left / 'hnad' is unknown here."
            })
    void names_in_one_column_or_in_two(String heading, String line, String wanted) {
        assertEquals(wanted, named(heading + "\n" + line + "\n", TableSettings.NONE));
    }

    @Test
    void what_the_settings_say_comes_first() {
        assertEquals("Ash", named("Name;Member\nFenwick;Ash\n", MEMBER));
        assertEquals("Ash", named("Member;First name;Last name\nAsh;x;y\n", MEMBER));
        assertEquals(
                "According to school.yaml the name is in column 'Member', but there is no such column.",
                named("Vorname;Nachname\nAsh;Fenwick\n", MEMBER));
    }

    /** Whatever else a club keeps is left alone, and said once. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Email,Phone,Address,City,Postcode,Country,Birthday,Born,Age,Gender,Sex,Club,Licence,Licence"
                        + " no.,Notes,Paid,Fee,"
                        + "Joined,ID,No.,T-shirt,Emergency"
                        + " contact,Doctor,Weapon,Group,Points,Mobile,Status,Photo consent",
                "N°,Adresse,Ville,Code"
                        + " postal,Pays,Naissance,Âge,Sexe,Téléphone,Courriel,Licence,Remarques,Payé,Cotisation,"
                        + "Arme,Groupe,Certificat médical,Catégorie",
                "Nr.,Straße,Ort,PLZ,Land,Geburtstag,Alter,Geschlecht,Telefon,Handy,E-Mail,Lizenz,Bemerkungen,Bezahlt,Beitrag,"
                        + "Waffe,Gruppe,Eintritt,Verein,Anrede,Titel",
                "Indirizzo,Città,CAP,Provincia,Nascita,Età,Sesso,Telefono,Cellulare,Tessera,Note,Pagato,Quota,Arma,Gruppo,"
                        + "Certificato medico,Categoria,Codice fiscale"
            })
    void columns_that_are_not_of_this_program(String others) {
        String text =
                "name," + others + "\nAsh" + others.replaceAll("[^,]+", "x").replaceFirst("^", ",") + "\n";
        CsvTable table = CsvTable.of(text);
        Findings findings = new Findings(new SourceFile("roster.csv", text));
        Heading.of(table, FIELDS, TableSettings.NONE).report("heading", findings);
        assertEquals(
                List.of(Severity.NOTE),
                findings.list().stream().map(Finding::severity).toList(),
                findings.list().toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '/',
            value = {
                "hand / G / left",
                "hand / Gaucher / left",
                "hand / L / left",
                "hand / left-handed / left",
                "hand / Mancina / left",
                "hand / Linkshänder / left",
                "hand / D / right",
                "hand / droitière / right",
                "hand / Destro / right",
                "hand / R / right",
                "away / Oui / yes",
                "away / FALSCH / no",
                "days / Lundi / monday",
                "days / giovedì / thursday",
                "days / Mi / wednesday",
                "role / Entraîneur / assistant",
                "hand / both / "
            })
    void what_cells_say_in_other_languages(String field, String written, String wanted) {
        assertEquals(Optional.ofNullable(wanted), TableWords.value(field, written));
    }

    /** What stands in quotes divides nothing; a first line may say it; empty columns at the edge are none. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '!',
            value = {
                "name,level\\nAsh,a\\n ! , ! 2",
                "name;level\\n\"Fenwick, Ash\";a\\n\"Hale, Bo\";b\\n ! ; ! 2",
                "name;level\\nFenwick, Ash;a\\nHale, Bo;b\\n ! ; ! 2",
                "name|level\\nAsh|a\\n ! | ! 2",
                "sep=;\\nname;level\\nAsh, Bo;a\\n ! ; ! 2",
                "name;level;;;\\nAsh;a;;;\\n ! ; ! 2",
                "name\\nAsh\\n ! , ! 1",
                "name;note\\nAsh;\"a, b, c, d\"\\nBo;\\n ! ; ! 2"
            })
    void what_stands_between_the_cells(String text, char separator, int width) {
        CsvTable table = CsvTable.of(text.replace("\\n", "\n"));
        assertEquals(separator, table.separator());
        assertEquals(width, Heading.of(table, FIELDS, TableSettings.NONE).width());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '/',
            value = {
                "02-Jan / a date",
                "2. Jan / a date",
                "02-janv / a date",
                "Mrz 26 / a date",
                "1.2E+05 / a number",
                "1,2E+05 / a number",
                "#NAME? / an error",
                "##### / an error",
                "May / ",
                "Jan Hale / ",
                "Ash 2 / ",
                "2-Ash / ",
                "one-two / "
            })
    void what_a_spreadsheet_has_made_of_a_name(String cell, String wanted) {
        assertEquals(Optional.ofNullable(wanted), Damage.of(cell).map(Message::english));
    }
}
