package org.drillwright.print.command.write;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.drillwright.print.command.console.TextColumn;
import org.drillwright.wording.Message;
import org.drillwright.wording.PackedFile;

/** A file to begin with, as it lies in the resources of this room: where it has a key, the words of that key stand. */
final class FileTemplate {

    private static final String REMARK = "# ";

    /** How long a remark's lines are, in characters. */
    private static final int WIDTH = 78;

    private static final Pattern KEY = Pattern.compile("\\{((?:remark|say)\\.[a-z.]+)\\}");

    private FileTemplate() {}

    /** With its words in a language, and remarks broken into lines; other gaps are left. */
    static String of(String name, Locale language) {
        return PackedFile.text(FileTemplate.class, name)
                .lines()
                .map(line -> said(line, language))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private static String said(String line, Locale language) {
        String said = KEY.matcher(line)
                .replaceAll(key -> Matcher.quoteReplacement(
                        Message.of(FileTemplate.class, key.group(1)).in(language)));
        return line.startsWith(REMARK)
                ? TextColumn.wrap(said.substring(REMARK.length()), WIDTH).stream()
                        .map(REMARK::concat)
                        .collect(Collectors.joining("\n"))
                : said;
    }
}
