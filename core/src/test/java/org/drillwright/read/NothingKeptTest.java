package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.SourceFile;
import org.drillwright.source.SourcePlaces;
import org.junit.jupiter.api.Test;

/** What is kept of a file when it has been read. */
class NothingKeptTest {

    private static final int TRIES = 100;

    /** What a reading leaves behind: places, and the tree if somebody keeps it. */
    private record Left(SourcePlaces places, WeakReference<Object> tree) {}

    private static Left read(String text) {
        SourceFile file = new SourceFile("drill.yaml", text);
        YamlDocument document = YamlDocument.compose(file, new Findings(file), () -> FileKeys.NONE)
                .orElseThrow();
        NodeReader nodes = new NodeReader(document, new Findings(file));
        nodes.root().text("title", 100);
        return new Left(nodes.places(), new WeakReference<>(document.root()));
    }

    @Test
    void the_tree_of_a_file_is_let_go() throws InterruptedException {
        List<Left> left = new ArrayList<>();
        for (int file = 0; file < 100; file++) {
            left.add(read("title: Drill " + file));
        }
        for (int tries = 0;
                tries < TRIES && left.stream().anyMatch(one -> !one.tree().refersTo(null));
                tries++) {
            System.gc();
            Thread.sleep(10);
        }
        assertTrue(left.stream().allMatch(one -> one.tree().refersTo(null)));
        assertEquals(
                "Drill 99",
                left.get(99).places().words(FieldPath.of("title")).orElseThrow().text());
    }

    @Test
    void ways_to_values_are_kept_once_for_all_files() {
        KnownPaths paths = new KnownPaths();
        FieldPath first = FieldPath.of("steps").item(2).key("leader");
        assertSame(first, paths.once(first));
        assertSame(first, paths.once(FieldPath.of("steps/2/leader")));
    }
}
