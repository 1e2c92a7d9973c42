package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the commands that plan classes say in each language. Expected sentences are from memory of each language's grammar;
 * a space at which no line may break is written as any other, M is the mark of a plan, T what a document is called.
 */
class SpokenPlanningTest {

    @TempDir
    Path folder;

    private String said(String language, String... arguments) {
        String[] all = new String[arguments.length + 2];
        System.arraycopy(arguments, 0, all, 0, arguments.length);
        all[arguments.length] = "--speak";
        all[arguments.length + 1] = language;
        Trial trial = Trial.run(folder, all);
        return (trial.out() + trial.err())
                .replace('\u00A0', ' ')
                .replaceAll("\\b[1-9A-Z]{4}-[1-9A-Z]\\b", "M")
                .strip();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | New0 is Pippa since 2026-08-27.              | Old0 left on 2026-09-01.
                    fr | New0 s’appelle Pippa depuis le 27 août 2026. | Old0 ne vient plus depuis le 1er septembre 2026.
                    it | Dal giorno 27 agosto 2026 New0 si chiama Pippa. | Dal giorno 1º settembre 2026 Old0 non viene più.
                    es | New0 se llama Pippa desde el 27 de agosto de 2026. | Old0 ya no viene desde el 1 de septiembre de 2026.
                    de | New0 heißt seit dem 27. August 2026 Pippa.   | Old0 kommt seit dem 1. September 2026 nicht mehr.
                    """)
    void who_is_called_otherwise_and_who_left(String language, String renamed, String left) {
        PlanFiles.of(folder, 1, 1);
        assertEquals(renamed, said(language, "roster", "--rename", "new0", "Pippa", "--date", "2026-08-27"));
        assertEquals(left, said(language, "roster", "--left", "old0"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | Kept as M. | record.csv: 3 lines added, as M was printed. | 3 lines taken back.
                    fr | Conservé sous la marque M. | record.csv : 3 lignes ajoutées, selon M tel qu’imprimé. | 3 lignes retirées.
                    it | Conservato come M. | record.csv: 3 righe aggiunte, secondo M così come stampato. | 3 righe ritirate.
                    es | Guardado como M. | record.csv: 3 líneas añadidas, según M tal como se imprimió. | 3 líneas retiradas.
                    de | Aufbewahrt als M. | record.csv: 3 Zeilen hinzugefügt, so wie M gedruckt wurde. | 3 Zeilen zurückgenommen.
                    """)
    void what_was_recorded_and_taken_back(String language, String kept, String recorded, String takenBack) {
        PlanFiles.of(folder, 1, 1);
        assertEquals(kept, said(language, "pairs", "tonight", "--keep"));
        assertEquals(recorded, said(language, "record", "tonight").replaceAll("\\b\\d+\\b", "3"));
        String back = said(language, "record", "tonight", "--take-back");
        assertTrue(back.endsWith(takenBack), back);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | There is no class 'tonigt' in the folder classes of the school; did you mean 'tonight'?
                    fr | Il n’y a pas de cours « tonigt » dans le dossier classes de l’école ; vouliez-vous dire « tonight » ?
                    it | Non c’è una lezione «tonigt» nella cartella classes della scuola; intendevate «tonight»?
                    es | No hay ninguna clase «tonigt» en la carpeta classes de la escuela; ¿quería decir «tonight»?
                    de | Im Ordner classes der Schule gibt es keine Stunde „tonigt“; ist „tonight“ gemeint?
                    """)
    void a_class_that_is_not_there(String language, String sentence) {
        PlanFiles.of(folder, 1, 1);
        assertEquals(sentence, said(language, "pairs", "tonigt"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | No plan K7QM-J of tonight was printed here; for 2026-08-26 none was. | --by is for the wall, --slips for people's hands: print one, then the other.
                    fr | Aucun plan K7QM-J de tonight n’a été imprimé ici ; pour le 26 août 2026, il n’y en a aucun. | --by vaut pour le mur, --slips pour tenir en main : imprimez l’un, puis l’autre.
                    it | Qui non è stato stampato nessun piano K7QM-J di tonight; per il giorno 26 agosto 2026 non ce n’è nessuno. | --by è per la parete, --slips per le mani di ciascuno: stampate l’uno, poi l’altro.
                    es | Aquí no se ha impreso ningún plan K7QM-J de tonight; para el 26 de agosto de 2026 no hay ninguno. | --by es para la pared, --slips para la mano de cada uno: imprima lo uno y luego lo otro.
                    de | Hier wurde kein Plan K7QM-J von tonight gedruckt; für den 26. August 2026 gibt es keinen. | --by ist für die Wand, --slips für die Hand: erst das eine drucken, dann das andere.
                    """)
    void what_pairs_refuses(String language, String noPlan, String oneOrTheOther) {
        PlanFiles.of(folder, 1, 1);
        assertEquals(noPlan.replace("K7QM-J", "M"), said(language, "pairs", "tonight", "--plan", "K7QM-J"));
        assertEquals(oneOrTheOther, said(language, "pairs", "tonight", "--out", "x.pdf", "--slips", "--by", "round"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | progress.pdf: T, 1 page. Print at 100 % (actual size).
                    fr | progress.pdf : T, 1 page. À imprimer à 100 % (taille réelle).
                    it | progress.pdf: T, 1 pagina. Da stampare al 100 % (dimensioni reali).
                    es | progress.pdf: T, 1 página. Para imprimir al 100 % (tamaño real).
                    de | progress.pdf: T, 1 Seite. Mit 100 % drucken (wahre Größe).
                    """)
    void what_was_printed(String language, String sentence) {
        PlanFiles.of(folder, 1, 1);
        String told = said(language, "progress", "--out", "progress.pdf");
        assertEquals(sentence, told.replaceFirst("(?<=pdf ?: ).*?(?=, \\d)", "T"));
    }
}
