package org.drillwright.register;

import java.util.Comparator;
import java.util.List;
import org.drillwright.source.Finding;

/**
 * What came of reading a record.
 *
 * @param history what stands: told and not taken back
 * @param batches what runs told of classes, whole, each once
 * @param loose lines outside of batches, such as those typed by hand
 * @param members who was renamed, and who left
 * @param together what two who train on their own told
 * @param form how the file is written, for what is added to it
 * @param findings the lines that could not be read, and those that are doubtful, by place
 */
public record ReadHistory(
        History history,
        List<Batch> batches,
        List<RecordLine> loose,
        Members members,
        Together together,
        RecordForm form,
        List<Finding> findings) {

    /** Nothing, because of what is wrong. */
    public static ReadHistory nothing(List<Finding> findings) {
        return new ReadHistory(
                History.NONE, List.of(), List.of(), Members.NONE, Together.NONE, RecordForm.NEW, findings);
    }

    public ReadHistory {
        batches = List.copyOf(batches);
        loose = List.copyOf(loose);
        findings = findings.stream()
                .sorted(Comparator.comparingInt(finding -> finding.span().start()))
                .toList();
    }
}
