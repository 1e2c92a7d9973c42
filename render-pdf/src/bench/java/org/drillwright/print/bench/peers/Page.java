package org.drillwright.print.bench.peers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures as Markdown; each line is shown as soon as it is known. */
final class Page {

    private final List<String> lines = new ArrayList<>();

    void line(String line) {
        System.out.println(line);
        lines.add(line);
    }

    void table(String... heads) {
        line("");
        line("| " + String.join(" | ", heads) + " |");
        line("|" + "---|".repeat(heads.length));
    }

    void row(String... cells) {
        line("| " + String.join(" | ", cells) + " |");
    }

    /** Says it if a tool is missing. */
    Optional<Tool> tool(String name) {
        Optional<Tool> tool = Tool.named(name);
        if (tool.isEmpty()) {
            line("`" + name + "` is not on this machine; what it would be compared in is left out.");
        }
        return tool;
    }

    String text() {
        return String.join("\n", lines) + "\n";
    }
}
