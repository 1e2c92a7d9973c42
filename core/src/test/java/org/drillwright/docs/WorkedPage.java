package org.drillwright.docs;

import java.util.List;
import org.drillwright.check.Worked;

/** The page of worked phrases, from the file that the tests play. */
final class WorkedPage {

    private WorkedPage() {}

    static String write() {
        StringBuilder page = new StringBuilder("""
                # Worked phrases

                What plays, beside what does not, with the source of each. The tests play all of them; `PagesTest` compares
                this page with their file, and writes it anew with `-Dupdate`.
                """);
        for (Worked phrase : Worked.all()) {
            page.append("\n## ").append(phrase.title()).append("\n\n");
            page.append(phrase.source()).append(".\n\n");
            page.append("Start: ")
                    .append(phrase.start())
                    .append(" Weapon: ")
                    .append(phrase.weapon())
                    .append(".\n\n");
            page.append("It plays:\n\n").append(table(phrase.right()));
            page.append(phrase.doubted() ? "\nIt is doubtful (`" : "\nIt does not (`")
                    .append(phrase.broken())
                    .append("`):\n\n")
                    .append(table(phrase.wrong()));
        }
        return page.toString();
    }

    private static String table(List<String> counts) {
        StringBuilder table = new StringBuilder("| count | leader | follower |\n|---|---|---|\n");
        for (int at = 0; at < counts.size(); at++) {
            table.append("| ")
                    .append(at + 1)
                    .append(" | ")
                    .append(counts.get(at))
                    .append(" |\n");
        }
        return table.toString();
    }
}
