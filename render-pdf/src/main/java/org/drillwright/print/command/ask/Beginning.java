package org.drillwright.print.command.ask;

import java.util.List;
import org.drillwright.model.Language;
import org.drillwright.wording.Message;

/** Begins a school in a folder that holds none. */
final class Beginning {

    private final DialogueContext table;

    Beginning(DialogueContext table) {
        this.table = table;
    }

    void ask() {
        Questionnaire form = table.form("begin")
                .text(
                        "name",
                        Message.of(Beginning.class, "beginning.what.is.your.school"),
                        Message.of(Beginning.class, "beginning.the.name.appears.at"))
                .choice(
                        "sheet",
                        Message.of(Beginning.class, "beginning.which.paper.is.in"),
                        () -> List.of(
                                AnswerOption.plain("A4", "a4"),
                                new AnswerOption(Message.of(Beginning.class, "beginning.letter.x.inches"), "letter")),
                        Message.of(Beginning.class, "beginning.you.can.change.this"))
                .choice(
                        "language",
                        Message.of(Beginning.class, "beginning.what.language.are.your"),
                        this::languages,
                        Message.of(Beginning.class, "beginning.this.is.for.words"));
        if (form.filled()) {
            table.run(
                    "begin",
                    "--sheet=" + form.answer("sheet", "a4"),
                    "--language=" + form.answer("language", "en"),
                    "--",
                    form.answer("name", ""));
        }
    }

    private List<AnswerOption> languages() {
        return Language.all().stream()
                .map(language ->
                        AnswerOption.plain(language.locale().getDisplayLanguage(table.language()), language.word()))
                .toList();
    }
}
