package org.drillwright.register;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.drillwright.source.Nearest;
import org.drillwright.source.Span;
import org.drillwright.table.Damage;
import org.drillwright.table.Repeated;
import org.drillwright.table.Unseen;
import org.drillwright.wording.Message;

/** The names that a record may speak of: of people, or of drills. */
final class KnownNames {

    private final String kind;
    private final Map<String, String> known = new HashMap<>();
    private final Repeated repeated;

    private KnownNames(String kind, Collection<String> names, Repeated repeated) {
        this.kind = kind;
        this.repeated = repeated;
        names.forEach(name -> known.put(Unseen.without(name).strip(), name));
    }

    static KnownNames people(RecordAround around, Repeated repeated) {
        KnownNames names = new KnownNames("person", around.people(), repeated);
        around.former()
                .forEach((old, now) ->
                        names.known.putIfAbsent(Unseen.without(old).strip(), now));
        names.known.put(History.INSTRUCTOR, History.INSTRUCTOR);
        return names;
    }

    static KnownNames drills(Collection<String> drills, Repeated repeated) {
        return new KnownNames("drill", drills, repeated);
    }

    /** The name in a cell, which may be empty, and one that nobody has now; nothing if a spreadsheet has spoilt it. */
    Optional<String> known(String name, Span place) {
        if (name.isEmpty() || known.containsKey(name)) {
            return Optional.of(known.getOrDefault(name, name));
        }
        Optional<Message> damage = Damage.of(name);
        if (damage.isPresent()) {
            repeated.add(
                    RecordRule.UNKNOWN_NAME.id(),
                    place,
                    Message.of(KnownNames.class, kind + ".damaged", name, damage.get()),
                    Message.of(KnownNames.class, "damaged.way"));
            return Optional.empty();
        }
        repeated.add(
                RecordRule.UNKNOWN_NAME.id(),
                place,
                Message.of(KnownNames.class, "no." + kind, name),
                () -> Nearest.meant(name, known.values())
                        .map(meant -> meant.then(Message.of(KnownNames.class, "line.kept")))
                        .orElse(Message.of(KnownNames.class, "line.kept.until")));
        return Optional.of(name);
    }
}
