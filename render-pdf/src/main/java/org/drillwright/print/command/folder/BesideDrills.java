package org.drillwright.print.command.folder;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.school.ClassFiles;

/**
 * What of the paths that a command was given lies beside the drills: the roster, the record, classes, terms, kept plans,
 * translations.
 *
 * @param files below the school's folder, with forward slashes; files and folders
 * @param others what was named besides: drills
 */
public record BesideDrills(List<String> files, List<String> others) {

    public BesideDrills {
        files = List.copyOf(files);
        others = List.copyOf(others);
    }

    public static BesideDrills among(List<String> named, Path school, Invocation run) {
        List<String> files = new ArrayList<>();
        List<String> others = new ArrayList<>();
        Path root = Locations.real(school);
        for (String name : named) {
            Optional<Path> file = Locations.existing(run.here(), name)
                    .or(() -> Locations.existing(school, name))
                    .map(Locations::real)
                    .filter(path -> ClassFiles.isBesideDrills(root, path));
            file.ifPresentOrElse(
                    path -> files.add(root.relativize(path).toString().replace('\\', '/')), () -> others.add(name));
        }
        return new BesideDrills(files, others);
    }

    /** Whether a file of the school, named as findings name it, is one of them or lies below one. */
    public boolean holds(String file) {
        return files.stream().anyMatch(one -> file.equals(one) || file.startsWith(one + "/"));
    }
}
