package org.drillwright.print.command.planning;

import java.util.function.Function;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.write.RecordFile;
import org.drillwright.register.Added;
import org.drillwright.register.ReadHistory;
import org.drillwright.school.ClassFiles;
import org.drillwright.school.ClassFolder;
import org.drillwright.table.TableText;
import org.drillwright.wording.Message;

/** Adds lines to a school's record, made of what it holds at that moment. */
public final class RecordAdding {

    private final ClassFolder classes;
    private final RecordFile file;

    public RecordAdding(ClassFolder classes) {
        this.classes = classes;
        this.file = RecordFile.of(classes.recordFile());
    }

    /** What would be added. */
    public Added shown(Function<ReadHistory, Added> lines) {
        return lines.apply(open(file.bytes()));
    }

    /** Adds it. */
    public Added add(Function<ReadHistory, Added> lines) {
        return file.append(bytes -> lines.apply(open(bytes)));
    }

    private ReadHistory open(byte[] bytes) {
        ReadHistory read = classes.record(bytes);
        if (!read.form().takesLines()) {
            TableText.Form form = read.form().text();
            throw new CannotRun(
                    form == TableText.Form.WORKBOOK
                            ? Message.of(RecordAdding.class, "record.workbook", ClassFiles.RECORD)
                            : Message.of(RecordAdding.class, "record.form", ClassFiles.RECORD, form.word()));
        }
        return read;
    }
}
