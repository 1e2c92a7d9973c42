package org.drillwright.print.command.drills;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.source.Finding;
import org.drillwright.source.SourceFile;

/** Names files as seen from where the caller stands, so that an editor can open them. */
final class FromHere {

    private FromHere() {}

    static List<Finding> named(List<Finding> findings, Path root, Path here) {
        Map<String, SourceFile> renamed = new HashMap<>();
        return findings.stream()
                .map(finding -> {
                    SourceFile file = finding.file();
                    SourceFile shown = renamed.computeIfAbsent(
                            file.name(), name -> new SourceFile(name(name, root, here), file.text()));
                    return new Finding(
                            finding.rule(),
                            finding.severity(),
                            shown,
                            finding.span(),
                            finding.what(),
                            finding.wayOut());
                })
                .toList();
    }

    static boolean isBelow(Path folder, Path here) {
        return folder.toAbsolutePath()
                .normalize()
                .startsWith(here.toAbsolutePath().normalize());
    }

    private static String name(String inSchool, Path root, Path here) {
        Path file = root.resolve(inSchool).toAbsolutePath().normalize();
        Path from = here.toAbsolutePath().normalize();
        Path shown = file.startsWith(from) ? from.relativize(file) : file;
        return shown.toString().replace('\\', '/');
    }
}
