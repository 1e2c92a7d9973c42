package org.drillwright.register;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;

/** Tells a class of an invented school in a record. */
final class Told {

    static final LocalDate DAY = LocalDate.of(2026, 9, 14);

    private Told() {}

    /** What a record of this text is to be added. */
    static String appended(String text, List<Entry> worked) {
        return appended(text, "tonight", worked);
    }

    static String appended(String text, String named, List<Entry> worked) {
        return added(text, named, worked).text();
    }

    static Added added(String text, String named, List<Entry> worked) {
        return RecordWriter.appended(
                read(text), new ClassTold(DAY, named, "none", worked, List.of(), List.of(), false));
    }

    static ReadHistory read(String text) {
        return RecordReader.read(
                "record.csv",
                text.getBytes(StandardCharsets.UTF_8),
                RecordAround.of(List.of("Ash", "Bo", "Cy"), List.of("thrust")));
    }

    /** The lines without those before and behind them. */
    static String bare(String appended) {
        return appended.replaceAll("(?m)^.*[,;](batch|done) .*\\n", "");
    }
}
