package org.drillwright.read;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.drillwright.source.FieldPath;

/** Ways to values that stand in file after file, each kept once however many files are read. */
final class KnownPaths {

    /** Far more than drills have; so that a folder of odd files does not fill the memory with their ways. */
    private static final int MOST = 4_000;

    private final Map<FieldPath, FieldPath> known = new ConcurrentHashMap<>();

    /** The path, as it was met first. */
    FieldPath once(FieldPath path) {
        FieldPath first = known.get(path);
        if (first == null && known.size() < MOST) {
            first = known.putIfAbsent(path, path);
        }
        return first == null ? path : first;
    }
}
