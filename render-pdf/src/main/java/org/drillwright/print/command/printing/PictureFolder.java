package org.drillwright.print.command.printing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.command.write.Kind;
import org.drillwright.print.command.write.Parts;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PngPictures;
import org.drillwright.wording.Message;

/** Cards as pictures in a folder, one for each side of each card. */
final class PictureFolder implements Product {

    private final Path folder;
    private final String shown;
    private final int resolution;
    private final PngPictures drawing;
    private final PrintOptions choices;
    private final List<Parts> files = new ArrayList<>();

    PictureFolder(PrintOptions choices, int resolution, Family faces, Path folder, String shown) {
        this.choices = choices;
        this.folder = folder;
        this.shown = shown;
        this.resolution = resolution;
        this.drawing = new PngPictures(faces, resolution);
    }

    @Override
    public void take(List<LaidCard> cards) {
        List<String> names = new ArrayList<>();
        List<Frame> sides = new ArrayList<>();
        for (LaidCard card : cards) {
            names.add(card.front().file());
            sides.add(card.leaf().front());
            card.leaf().back().ifPresent(back -> {
                names.add(card.back().file());
                sides.add(back);
            });
        }
        try {
            drawing.draw(sides, (side, png) -> {
                Parts file = new Parts(folder.resolve(names.get(side)), Kind.PNG);
                files.add(file);
                file.add(png);
            });
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    @Override
    public void place() {
        files.forEach(file -> file.place((name, number, of) -> name));
    }

    @Override
    public void discard() {
        files.forEach(Parts::discard);
    }

    @Override
    public Message said() {
        return Message.of(
                PictureFolder.class,
                "pictures.of.cards.of.size",
                shown,
                CountedNoun.of(files.size(), "picture"),
                choices.size().word(),
                resolution);
    }
}
