package org.drillwright.source;

import java.util.ArrayList;
import java.util.List;

/** Gathers what is found in one file. */
public final class Findings {

    private final SourceFile file;
    private final List<Finding> found = new ArrayList<>();

    public Findings(SourceFile file) {
        this.file = file;
    }

    public SourceFile file() {
        return file;
    }

    public void error(String rule, Span span, String what, String wayOut) {
        add(rule, Severity.ERROR, span, what, wayOut);
    }

    public void warning(String rule, Span span, String what, String wayOut) {
        add(rule, Severity.WARNING, span, what, wayOut);
    }

    public void note(String rule, Span span, String what, String wayOut) {
        add(rule, Severity.NOTE, span, what, wayOut);
    }

    public void add(String rule, Severity severity, Span span, String what, String wayOut) {
        found.add(new Finding(rule, severity, file, span, what, wayOut));
    }

    public void addAll(List<Finding> others) {
        found.addAll(others);
    }

    public boolean hasError() {
        return found.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }

    public List<Finding> list() {
        return List.copyOf(found);
    }
}
