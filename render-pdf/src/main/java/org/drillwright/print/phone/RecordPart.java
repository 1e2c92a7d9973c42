package org.drillwright.print.phone;

import java.util.Optional;

/**
 * The part of a list with what its ticks say to the record, to copy or read off; the script fills it and shows it.
 *
 * @param title above it
 * @param how what to do with the line
 * @param mind what the line can't say, shown where it can't
 * @param rows as many as the line usually takes
 */
record RecordPart(PhoneText title, PhoneText how, Optional<PhoneText> mind, int rows) {

    void write(Html html, Voice voice) {
        html.start("div", "class", "part live", "id", "done", "hidden", "");
        html.put("h3", voice.text(title));
        html.put("p", voice.text(how), "id", "record-how");
        mind.ifPresent(word -> html.put("p", voice.text(word), "id", "unsaid", "class", "mind", "hidden", ""));
        html.start(
                "textarea",
                "id",
                "record",
                "readonly",
                "",
                "rows",
                String.valueOf(rows),
                "dir",
                "ltr",
                "spellcheck",
                "false",
                "aria-labelledby",
                "record-how");
        html.end("textarea").start("p", "class", "pair");
        html.put("button", voice.text(PhoneText.COPY), "type", "button", "id", "copy");
        html.put("button", voice.text(PhoneText.CLEAR), "type", "button", "id", "clear")
                .end("p");
        html.put("p", "", "id", "copied", "role", "status");
        html.put("p", voice.text(PhoneText.STAYS), "id", "stays").end("div");
    }
}
