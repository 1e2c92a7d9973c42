package org.drillwright.autofix;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.DrillSet;
import org.drillwright.read.ReadSchool;
import org.drillwright.source.FieldPath;

/** Writes a drill at the end of a set's list; everything else in the settings stays as it is, letter by letter. */
public final class Listing {

    private Listing() {}

    /**
     * The text of the settings with a drill in a set.
     *
     * @param id of the drill
     * @return empty if the set has no list to which it could be added
     */
    public static Optional<String> text(ReadSchool settings, DrillSet set, String id) {
        if (!set.isListed()) {
            return Optional.empty();
        }
        FieldPath list = FieldPath.of("sets").key(set.name()).key("drills");
        KeyInsertion page = new KeyInsertion(settings.file(), settings.places());
        Edit edit = page.itemsBehind(list, set.drills().size(), List.of(id));
        return Optional.of(Edit.apply(settings.file().text(), List.of(edit)));
    }
}
