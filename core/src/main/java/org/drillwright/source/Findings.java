package org.drillwright.source;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.wording.Message;

/** Gathers what is found in one file: so much of it as anybody reads, and that there is more. */
public final class Findings {

    /** Findings that are told one by one. */
    public static final int MOST = 500;

    private final SourceFile file;
    private final List<Finding> found = new ArrayList<>();
    private final List<Finding> untold = new ArrayList<>();
    private int more;
    private int errors;

    public Findings(SourceFile file) {
        this.file = file;
    }

    public SourceFile file() {
        return file;
    }

    public void error(String rule, Span span, Message what, Message wayOut) {
        add(rule, Severity.ERROR, span, what, wayOut);
    }

    public void warning(String rule, Span span, Message what, Message wayOut) {
        add(rule, Severity.WARNING, span, what, wayOut);
    }

    public void note(String rule, Span span, Message what, Message wayOut) {
        add(rule, Severity.NOTE, span, what, wayOut);
    }

    public void add(String rule, Severity severity, Span span, Message what, Message wayOut) {
        add(new Finding(rule, severity, file, span, what, wayOut));
    }

    public void addAll(List<Finding> others) {
        others.forEach(this::add);
    }

    /** Of those that are not told the heaviest is kept, so that it is known how bad the file is. */
    private void add(Finding finding) {
        errors += finding.severity() == Severity.ERROR ? 1 : 0;
        if (found.size() < MOST) {
            found.add(finding);
            return;
        }
        more++;
        if (untold.isEmpty() || finding.severity().compareTo(untold.get(0).severity()) < 0) {
            untold.clear();
            untold.add(finding);
        }
    }

    public boolean hasError() {
        return errors > 0;
    }

    /** How many errors were found, told or not. */
    public int errors() {
        return errors;
    }

    public List<Finding> list() {
        List<Finding> all = new ArrayList<>(found);
        untold.forEach(finding -> all.add(new Finding(
                finding.rule(),
                finding.severity(),
                file,
                finding.span(),
                Message.of(Findings.class, "more", more),
                Message.of(Findings.class, "more.way"))));
        return List.copyOf(all);
    }
}
