package org.drillwright.print.command.printing;

import java.nio.file.Path;
import java.util.OptionalInt;
import org.drillwright.model.School;
import org.drillwright.print.pdf.Family;

/**
 * Where cards go: into a document, or as pictures into a folder.
 *
 * @param path the document or the folder
 * @param shown as whoever runs the program named it
 * @param dots an inch of pictures; empty for a document
 */
public record OutputTarget(Path path, String shown, OptionalInt dots) {

    Product product(PrintOptions choices, School school, String title, Family faces) {
        return dots.isPresent()
                ? new PictureFolder(choices, dots.getAsInt(), faces, path, shown)
                : new Documents(choices, school, title, faces, path, shown);
    }
}
