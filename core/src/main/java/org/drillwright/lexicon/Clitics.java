package org.drillwright.lexicon;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Words that are written as one: {@code don't}, {@code l'épée}, {@code nel}.
 *
 * @param whole a word as written, and the words that it stands for
 * @param leading what stands before an apostrophe, and the words for it
 * @param trailing what stands behind a word's last apostrophe, with it, and the words for it
 */
record Clitics(Map<String, List<String>> whole, Map<String, List<String>> leading, Map<String, List<String>> trailing) {

    Clitics {
        whole = Map.copyOf(whole);
        leading = Map.copyOf(leading);
        trailing = Map.copyOf(trailing);
    }

    /** Each way of writing words as one, but for what stands behind an apostrophe, and the words. */
    Map<String, List<String>> together() {
        Map<String, List<String>> all = new HashMap<>(whole);
        all.putAll(leading);
        return all;
    }

    /** The words of something that was written as one word, folded already. */
    List<String> parts(String word) {
        if (whole.containsKey(word)) {
            return whole.get(word);
        }
        int sign = word.indexOf('\'');
        if (sign < 0) {
            return List.of(word);
        }
        List<String> parts = new ArrayList<>();
        String rest = word;
        if (leading.containsKey(word.substring(0, sign + 1))) {
            parts.addAll(leading.get(word.substring(0, sign + 1)));
            rest = word.substring(sign + 1);
        }
        int last = rest.lastIndexOf('\'');
        if (last < 0 || !trailing.containsKey(rest.substring(last))) {
            String bare = rest.replace("'", "");
            parts.addAll(whole.getOrDefault(rest, whole.getOrDefault(bare, List.of(bare))));
        } else {
            if (last > 0) {
                String bare = rest.substring(0, last).replace("'", "");
                parts.addAll(whole.getOrDefault(bare, List.of(bare)));
            }
            parts.addAll(trailing.get(rest.substring(last)));
        }
        return parts;
    }
}
