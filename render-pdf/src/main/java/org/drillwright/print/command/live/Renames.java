package org.drillwright.print.command.live;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.drillwright.check.Subject;

/** Finds the files that have another name than before: what they say is the same, or at least their title. */
final class Renames {

    private final List<LiveDrill> fresh = new ArrayList<>();

    private Renames(List<LiveDrill> fresh) {
        this.fresh.addAll(fresh);
    }

    /** @return new names by old ones */
    static Map<String, String> between(Map<String, LiveDrill> before, Map<String, LiveDrill> after) {
        List<LiveDrill> fresh = after.values().stream()
                .filter(sheet -> !before.containsKey(sheet.name()))
                .toList();
        List<LiveDrill> gone = before.values().stream()
                .filter(sheet -> !after.containsKey(sheet.name()))
                .toList();
        Renames renames = new Renames(fresh);
        Map<String, String> found = new LinkedHashMap<>();
        for (Function<LiveDrill, String> likeness :
                List.<Function<LiveDrill, String>>of(LiveDrill::text, Renames::title)) {
            for (LiveDrill sheet : gone) {
                if (!found.containsKey(sheet.name())) {
                    renames.take(sheet, likeness).ifPresent(other -> found.put(sheet.name(), other.name()));
                }
            }
        }
        return found;
    }

    private static String title(LiveDrill sheet) {
        return sheet.subject().map(Subject::drill).map(drill -> drill.title()).orElse("");
    }

    /** Of several, the one with the same name in another folder; otherwise nobody knows. */
    private Optional<LiveDrill> take(LiveDrill gone, Function<LiveDrill, String> likeness) {
        String wanted = likeness.apply(gone);
        List<LiveDrill> alike = fresh.stream()
                .filter(sheet -> !wanted.isEmpty() && likeness.apply(sheet).equals(wanted))
                .toList();
        Optional<LiveDrill> one = alike.size() == 1
                ? Optional.of(alike.get(0))
                : alike.stream().filter(sheet -> file(sheet).equals(file(gone))).findFirst();
        one.ifPresent(fresh::remove);
        return one;
    }

    private static String file(LiveDrill sheet) {
        return sheet.name().substring(sheet.name().lastIndexOf('/') + 1);
    }
}
