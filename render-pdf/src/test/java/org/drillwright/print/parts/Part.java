package org.drillwright.print.parts;

import java.io.File;
import java.nio.file.Path;
import java.util.Arrays;

/** A library in a bill of materials. */
public record Part(String group, String name, String version) {

    /** Its archive, which is on the tests' class path. */
    public Path archive() {
        String file = name + "-" + version + ".jar";
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(Path::of)
                .filter(path -> path.endsWith(file))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(file + " is not on the class path"));
    }

    public boolean isOurs() {
        return group.equals("org.drillwright");
    }

    @Override
    public String toString() {
        return name + " " + version;
    }
}
