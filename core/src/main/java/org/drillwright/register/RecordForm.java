package org.drillwright.register;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.table.SpreadsheetCell;
import org.drillwright.table.TableText;

/**
 * How a record's file is written, so that what is added to it is written alike.
 *
 * @param text in which signs
 * @param separator what stands between its cells
 * @param columns the field of each of its columns, empty for one that isn't the record's; none if it has no heading yet
 * @param ended whether its last line has its end
 */
public record RecordForm(TableText.Form text, char separator, List<String> columns, boolean ended) {

    /** A file that isn't there yet. */
    static final RecordForm NEW = new RecordForm(TableText.Form.UTF_8, ',', List.of(), true);

    public RecordForm {
        columns = List.copyOf(columns);
    }

    /** Whether lines can be written behind what stands there. */
    public boolean takesLines() {
        return text == TableText.Form.UTF_8;
    }

    /**
     * Lines in this form, behind what a last line that was cut short lacks, and behind a heading if there is none.
     *
     * @param rows cells in the order of {@link RecordReader#COLUMNS}
     */
    String appended(List<List<String>> rows) {
        List<List<String>> lines = new ArrayList<>(columns.isEmpty() ? List.of(RecordReader.COLUMNS) : List.of());
        rows.forEach(row -> lines.add(inOrder(row)));
        StringBuilder text = new StringBuilder(ended ? "" : "\n");
        lines.forEach(line -> text.append(SpreadsheetCell.line(line, separator)).append('\n'));
        return text.toString();
    }

    private List<String> inOrder(List<String> row) {
        return columns.isEmpty()
                ? row
                : columns.stream()
                        .map(RecordReader.COLUMNS::indexOf)
                        .map(at -> at < 0 ? "" : row.get(at))
                        .toList();
    }
}
