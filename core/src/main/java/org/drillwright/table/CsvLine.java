package org.drillwright.table;

import java.util.List;
import org.drillwright.source.Span;

/**
 * One line of a table that isn't empty.
 *
 * @param cells the texts, without quotes and without the mark that keeps a spreadsheet from running them
 * @param spans where each cell stands
 * @param span where the line stands
 * @param ended whether the line has its end; only the last may lack it
 */
public record CsvLine(List<String> cells, List<Span> spans, Span span, boolean ended) {

    public CsvLine {
        cells = List.copyOf(cells);
        spans = List.copyOf(spans);
    }

    /** A cell's text, trimmed; empty if the line has no such cell. */
    public String cell(int at) {
        return at >= 0 && at < cells.size() ? cells.get(at).strip() : "";
    }

    /** Whether anything stands behind so many cells. */
    public boolean isLongerThan(int width) {
        return cells.stream().skip(width).anyMatch(cell -> !cell.isBlank());
    }

    /** Where a cell stands; the line if it has no such cell. */
    public Span place(int at) {
        return at >= 0 && at < spans.size() ? spans.get(at) : span;
    }
}
