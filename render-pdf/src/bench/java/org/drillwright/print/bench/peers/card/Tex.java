package org.drillwright.print.bench.peers.card;

import java.util.List;
import org.drillwright.print.frame.Role;

/** Cards as LaTeX. */
public final class Tex {

    private static final String HEAD =
            """
            \\documentclass{article}
            \\usepackage[paperwidth=105mm,paperheight=148mm,margin=5mm]{geometry}
            \\usepackage[T1]{fontenc}
            \\usepackage{textcomp}
            \\usepackage{DejaVuSansCondensed}
            \\renewcommand*\\familydefault{\\sfdefault}
            \\pagestyle{empty}\\parindent=0pt\\parskip=1pt\\tabcolsep=1pt
            \\newcommand\\size[1]{\\fontsize{#1pt}{\\dimexpr 1.17\\dimexpr #1pt}\\selectfont}
            \\newcommand\\cell{\\raggedright\\arraybackslash\\hyphenpenalty=10000\\size{6}}
            \\newcommand\\arraybackslash{\\let\\\\\\tabularnewline}
            \\begin{document}\\hyphenpenalty=10000\\raggedright\\size{5.4}
            """;

    private static final String TABLE = "\\begin{tabular}{p{8mm}p{23.4mm}p{23.4mm}p{13.4mm}p{23.4mm}}\\hline\n";

    private final StringBuilder page = new StringBuilder(HEAD);

    private Tex() {}

    public static String of(List<Part> cards) {
        Tex tex = new Tex();
        for (Part card : cards) {
            card.parts().forEach(tex::part);
            tex.page.append("\\newpage\n");
        }
        return tex.page.append("\\end{document}\n").toString();
    }

    private void part(Part part) {
        switch (part.role()) {
            case TITLE -> {
                page.append("\\hspace*{8mm}{\\size{9}\\bfseries ");
                words(part);
                page.append("\\par}\n");
            }
            case PARAGRAPH -> {
                words(part);
                page.append("\\par\n");
            }
            case TABLE -> {
                page.append(TABLE);
                part.parts().forEach(this::row);
                page.append("\\end{tabular}\\par\n");
            }
            default -> throw new IllegalStateException("no " + part.role() + " outside a table");
        }
    }

    private void row(Part row) {
        for (int at = 0; at < row.parts().size(); at++) {
            Part cell = row.parts().get(at);
            page.append(at == 0 ? "\\cell " : "&\\cell ");
            page.append(cell.role() == Role.CELL ? "" : "\\bfseries ");
            words(cell);
        }
        page.append("\\tabularnewline\\hline\n");
    }

    private void words(Part part) {
        for (Run run : part.runs()) {
            String text = escaped(run.text());
            page.append(run.bold() && part.role() == Role.PARAGRAPH ? "\\textbf{" + text + "}" : text);
        }
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\textbackslash{}")
                .replaceAll("([&%$#_{}])", "\\\\$1")
                .replace("\u00A0", "~")
                .replace("'", "\\textquotesingle{}")
                .replace("\"", "\\textquotedbl{}")
                .replace("·", "\\textperiodcentered{}");
    }
}
