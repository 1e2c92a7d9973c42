package org.drillwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

class LineReportTest {

    @Test
    void a_finding_is_one_line() {
        SourceFile file = new SourceFile("set/a drill.yaml", "title: \ud83e\udd3a b\nlevel: x\n");
        List<Finding> findings = List.of(
                new Finding(
                        "unknown-word",
                        Severity.ERROR,
                        file,
                        new Span(19, 20),
                        Message.plain("'x' is unknown\nhere."),
                        Message.plain("Known:  a.")),
                new Finding(
                        "a-rule", Severity.NOTE, file, new Span(10, 11), Message.plain("What."), Message.plain("")));
        assertEquals("""
                set/a drill.yaml:2:8: error: 'x' is unknown here. Known: a. (unknown-word)
                set/a drill.yaml:1:10: note: What. (a-rule)
                """, LineReport.of(findings, Locale.ENGLISH));
    }

    @Test
    void a_files_name_cannot_break_the_line() {
        Finding finding = new Finding(
                "a-rule",
                Severity.WARNING,
                new SourceFile("a\nb.yaml", ""),
                Span.at(0),
                Message.plain("What."),
                Message.plain(""));
        assertEquals("a\ufffdb.yaml:1:1: warning: What. (a-rule)\n", LineReport.of(List.of(finding), Locale.ENGLISH));
    }

    @Test
    void nothing_found_is_no_line() {
        assertEquals("", LineReport.of(List.of(), Locale.ENGLISH));
    }
}
