package org.drillwright.print.command.write;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** One file, or the volumes it was shared out on: all are written beside their place first, and moved at the end. */
public final class Parts {

    private final Path target;
    private final Kind kind;
    private final List<PartFile> written = new ArrayList<>();
    private int count;

    /** What a volume is called. */
    @FunctionalInterface
    public interface Naming {
        /** @param number of the volume, from 1 */
        String name(String file, int number, int of);
    }

    /** @param kind of file that the parts are */
    public Parts(Path target, Kind kind) {
        this.target = target;
        this.kind = kind;
    }

    /** Writes one more part beside its place. */
    public void add(byte[] bytes) {
        count++;
        written.add(new WholeFile(target).beside(bytes));
    }

    /** How many there are, placed or not. */
    public int count() {
        return count;
    }

    /** Moves all parts into place, none if one of the places is taken by what is not ours to replace. */
    public void place(Naming naming) {
        List<WholeFile> places = new ArrayList<>();
        for (int number = 1; number <= written.size(); number++) {
            String name =
                    naming.name(Objects.requireNonNull(target.getFileName()).toString(), number, written.size());
            places.add(new WholeFile(target.resolveSibling(name)));
        }
        try {
            places.forEach(place -> place.mustBeFree(kind));
            // A part leaves the list first: where it cannot be moved, it is kept and its place is named.
            places.forEach(place -> place.take(written.remove(0)));
        } finally {
            discard();
        }
    }

    /** Deletes what was written and not placed. */
    public void discard() {
        written.forEach(PartFile::discard);
    }
}
