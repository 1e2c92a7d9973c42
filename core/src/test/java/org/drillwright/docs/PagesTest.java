package org.drillwright.docs;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The stored pages are what the program makes of them now. */
class PagesTest {

    @Test
    void rules() throws IOException {
        Page.compare("rules.md", RulesPage.write());
    }

    @Test
    void words() throws IOException {
        Page.compare("words.md", WordsPage.write());
    }

    @Test
    void parries() throws IOException {
        Page.compare("parries.md", ParriesPage.write());
    }
}
