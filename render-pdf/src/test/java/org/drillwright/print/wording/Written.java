package org.drillwright.print.wording;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.model.Language;
import org.drillwright.wording.Bundle;

/** What the files of a room's words have in them, whoever asks for it. */
public final class Written {

    private Written() {}

    /** The keys, those of a number's forms as one; all languages have the same, as {@link EveryWordTest} sees to. */
    public static Set<String> keys(Class<?> room, String kind) {
        Set<String> keys = Bundle.in(room, kind, Language.ENGLISH.locale()).keys();
        return keys.stream()
                .map(key -> {
                    String bare = key.replaceFirst("\\.(one|other)$", "");
                    return keys.contains(bare + ".other") ? bare : key;
                })
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** All texts in one language. */
    public static Stream<String> texts(Class<?> room, String kind, Language language) {
        Bundle words = Bundle.in(room, kind, language.locale());
        return words.keys().stream().flatMap(key -> words.find(key).stream());
    }
}
