package org.drillwright.print.command.ask;

import java.util.List;
import java.util.Locale;
import org.drillwright.model.Language;

/** Begins a school in a folder that holds none. */
final class Beginning {

    private final Table table;

    Beginning(Table table) {
        this.table = table;
    }

    void ask() {
        Form form = table.form("begin")
                .text("name", "What is your school called?", "The name appears at the foot of every card.")
                .choice(
                        "sheet",
                        "Which paper is in your printer?",
                        () -> List.of(new Choice("A4", "a4"), new Choice("Letter (8 1/2 x 11 inches)", "letter")),
                        "You can change this later, in school.yaml.")
                .choice(
                        "language",
                        "What language are your cards in?",
                        Beginning::languages,
                        "This is for words the program adds, such as 'Leader' and 'Distance'. The words of your"
                                + " drills are your own.");
        if (form.filled()) {
            table.run(
                    "begin",
                    "--sheet=" + form.answer("sheet", "a4"),
                    "--language=" + form.answer("language", "en"),
                    "--",
                    form.answer("name", ""));
        }
    }

    private static List<Choice> languages() {
        return Language.all().stream()
                .map(language -> new Choice(language.locale().getDisplayLanguage(Locale.ENGLISH), language.word()))
                .toList();
    }
}
