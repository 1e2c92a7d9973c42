package org.drillwright.docs;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.docs.TermSources.Cell;
import org.drillwright.docs.TermSources.Row;

/** The page of the trade's terms in five languages, each with its source. */
final class TermsPage {

    private static final Map<String, String> TITLES = Map.of(
            "side", "Who",
            "line", "Lines",
            "position", "Positions",
            "parry", "Parries",
            "path", "Ways of a stroke",
            "measure", "Measures",
            "target", "Targets",
            "weapon", "Weapons");

    private TermsPage() {}

    static String write() {
        TermSources terms = TermSources.read();
        StringBuilder page = new StringBuilder("""
                # The trade's terms in five languages

                What the program calls each thing, and the source of each word in brackets; the sources stand below. A word from memory is
                said to be. The program reads the other words of the trade too: [words.md](words.md).
                """);
        terms.rows().stream()
                .map(TermsPage::title)
                .distinct()
                .forEach(title -> table(
                        page,
                        title,
                        terms.rows().stream()
                                .filter(row -> title(row).equals(title))
                                .toList()));
        page.append("\n## Where the sources differ\n\n").append(terms.differences());
        page.append("\n## Sources\n\n| code | source |\n|---|---|\n");
        terms.sources().forEach((code, source) -> page.append(row(Stream.of(code, source))));
        return page.toString();
    }

    private static String title(Row row) {
        return row.ofBundle() ? TITLES.getOrDefault(row.key().split("\\.")[0], row.key()) : "Actions";
    }

    private static void table(StringBuilder page, String title, List<Row> rows) {
        page.append("\n## ").append(title).append("\n\n");
        page.append(row(each(tag -> Locale.forLanguageTag(tag).getDisplayLanguage(Locale.ENGLISH))));
        page.append("|---".repeat(TermSources.LANGUAGES.size())).append("|\n");
        rows.forEach(row -> page.append(row(row.cells().stream().map(TermsPage::shown))));
    }

    private static Stream<String> each(Function<String, String> cell) {
        return TermSources.LANGUAGES.stream().map(cell);
    }

    private static String shown(Cell cell) {
        return cell.word() + " [" + String.join(", ", cell.sources()) + "]";
    }

    private static String row(Stream<String> cells) {
        return cells.collect(Collectors.joining(" | ", "| ", " |\n"));
    }
}
