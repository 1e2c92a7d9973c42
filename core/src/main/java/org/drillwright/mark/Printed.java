package org.drillwright.mark;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;

/**
 * One line of the record: a drill's cards were printed.
 *
 * @param drill its id on that day
 * @param language that it was printed in, if in another than it would be by itself
 */
public record Printed(LocalDate date, PrintMark mark, String drill, CardSize size, Optional<Language> language) {

    /** A line's fields, without the language. */
    private static final int FIELDS = 4;

    private static final Pattern TAG = Pattern.compile("[a-z]{2,3}");

    private static final Pattern FIELD = Pattern.compile("\\G(?:^|,)(?:\"((?:[^\"]|\"\")*)\"|([^\",]*))");

    /** The line as RFC 4180 has it: a text with a comma or a quotation mark stands between quotation marks. */
    String line(boolean withLanguage) {
        String line = date + "," + mark.shown() + "," + quoted(drill) + "," + size.word();
        return withLanguage ? line + "," + language.map(Language::word).orElse("") : line;
    }

    private static String quoted(String text) {
        return text.matches("[^\",]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
    }

    /** Nothing if it is no such line, whole. */
    static Optional<Printed> read(String line) {
        List<String> fields = fields(line);
        boolean told = fields.size() == FIELDS + 1 && !fields.get(FIELDS).isEmpty();
        if (fields.size() < FIELDS
                || fields.size() > FIELDS + 1
                || (told && !TAG.matcher(fields.get(FIELDS)).matches())) {
            return Optional.empty();
        }
        Optional<Language> language = told ? Optional.of(new Language(fields.get(FIELDS))) : Optional.empty();
        Optional<PrintMark> mark = PrintMark.read(fields.get(1));
        Optional<CardSize> size = Arrays.stream(CardSize.values())
                .filter(one -> one.word().equals(fields.get(3)))
                .findFirst();
        try {
            LocalDate date = LocalDate.parse(fields.get(0));
            return mark.flatMap(there -> size.map(one -> new Printed(date, there, fields.get(2), one, language)));
        } catch (DateTimeParseException strange) {
            return Optional.empty();
        }
    }

    private static List<String> fields(String line) {
        List<String> fields = new ArrayList<>();
        Matcher field = FIELD.matcher(line);
        int end = 0;
        while (field.find()) {
            String quoted = field.group(1);
            fields.add(quoted != null ? quoted.replace("\"\"", "\"") : field.group(2));
            end = field.end();
        }
        return end == line.length() ? fields : List.of();
    }
}
