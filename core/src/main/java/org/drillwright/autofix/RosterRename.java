package org.drillwright.autofix;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.drillwright.plan.roster.Apart;
import org.drillwright.plan.roster.Roster;
import org.drillwright.read.RosterReader;
import org.drillwright.source.FieldPath;
import org.drillwright.source.SourceFile;
import org.drillwright.source.SourcePlaces;

/** Gives somebody in a roster's own text another name, and writes the old one beside it; remarks and layout stay. */
public final class RosterRename {

    private static final Pattern PLAIN = Pattern.compile("\\p{L}[\\p{L}\\p{N}]*(?:[ .'-]+[\\p{L}\\p{N}]+)*");

    /** Words that YAML takes for something else than a text. */
    private static final Set<String> NO_TEXT = Set.of("yes", "no", "on", "off", "true", "false", "null", "y", "n");

    private final SourceFile file;
    private final SourcePlaces places;
    private final String old;
    private final String now;
    private final List<Edit> edits = new ArrayList<>();

    private RosterRename(SourceFile file, SourcePlaces places, String old, String now) {
        this.file = file;
        this.places = places;
        this.old = old;
        this.now = now;
    }

    /** The roster's text with the new name; nothing if it can't be written so that it reads as it did. */
    public static Optional<String> of(RosterReader reader, SourceFile file, String old, String now) {
        Optional<Roster> before = read(reader, file.name(), file.text());
        String text = before.map(roster -> file.name().toLowerCase(Locale.ROOT).endsWith(".csv")
                        ? TableRename.text(file, old, now)
                        : new RosterRename(file, reader.places(file), old, now).text(roster))
                .orElse(file.text());
        Optional<Roster> wanted = before.map(roster -> called(roster, name -> name.equals(old) ? now : name));
        return read(reader, file.name(), text)
                .filter(after ->
                        wanted.filter(roster -> sameExceptFormer(roster, after)).isPresent())
                .map(after -> text);
    }

    private static Optional<Roster> read(RosterReader reader, String name, String text) {
        return reader.read(name, text.getBytes(StandardCharsets.UTF_8)).value();
    }

    private static Roster called(Roster roster, UnaryOperator<String> name) {
        return new Roster(
                roster.people().stream()
                        .map(person -> person.called(name.apply(person.name())))
                        .toList(),
                roster.assistants().stream().map(name).toList(),
                roster.apart().stream()
                        .map(pair -> new Apart(name.apply(pair.one()), name.apply(pair.other())))
                        .toList());
    }

    private static boolean sameExceptFormer(Roster one, Roster other) {
        return one.people().equals(other.people())
                && one.assistants().equals(other.assistants())
                && one.apart().equals(other.apart());
    }

    private String text(Roster roster) {
        for (int at = 0; at < roster.people().size(); at++) {
            FieldPath person = FieldPath.ROOT.key("people").item(at);
            replace(person.key("name"));
            replaceEach(person.key("apart"));
            if (roster.people().get(at).name().equals(old)) {
                was(person);
            }
        }
        replaceEach(FieldPath.ROOT.key("assistants"));
        return Edit.apply(file.text(), edits);
    }

    private void replace(FieldPath path) {
        places.words(path)
                .filter(words -> words.text().equals(old))
                .ifPresent(words -> edits.add(new Edit(places.span(path), written(now))));
    }

    private int replaceEach(FieldPath list) {
        int size = 0;
        while (places.field(list.item(size)).isPresent()) {
            replace(list.item(size++));
        }
        return size;
    }

    private void was(FieldPath person) {
        FieldPath was = person.key("was");
        KeyInsertion page = new KeyInsertion(file, places);
        int size = replaceEach(was);
        if (size > 0) {
            edits.add(page.itemsBehind(was, size, List.of(written(old))));
        } else {
            page.keyAfter(person, List.of("name"), "was: [" + written(old) + "]")
                    .ifPresent(edits::add);
        }
    }

    private static String written(String name) {
        boolean plain = PLAIN.matcher(name).matches() && !NO_TEXT.contains(name.toLowerCase(Locale.ROOT));
        return plain ? name : '"' + name.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
