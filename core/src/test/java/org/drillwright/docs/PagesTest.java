package org.drillwright.docs;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The stored pages are what the program makes of them now. */
class PagesTest {

    @Test
    void rules() throws IOException {
        Page.compare("rules.md", RulesPage.write());
    }

    @Test
    void worked_phrases() throws IOException {
        Page.compare("worked.md", WorkedPage.write());
    }

    @Test
    void words() throws IOException {
        Page.compare("words.md", WordsPage.write());
    }

    @Test
    void terms() throws IOException {
        Page.compare("terms.md", TermsPage.write());
    }

    /** The README shows what the intermediate set works; the table stands between two remarks. */
    @Test
    void the_readme_shows_the_table_of_the_example_set() throws IOException {
        Page.compareBetween(Path.of("..", "README.md"), "<!-- example set -->", ExampleSetTable.write());
    }

    @Test
    void parries() throws IOException {
        Page.compare("parries.md", ParriesPage.write());
    }
}
