package org.drillwright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.Token;
import org.drillwright.source.Span;

/** Words that leave something open. */
final class OpenWords {

    private OpenWords() {}

    /** Those of a piece, unless they are said about something else. */
    static List<Span> in(LanguageTables tongue, List<Token> sentence, SentencePart piece) {
        List<Span> open = new ArrayList<>();
        boolean aboutOthers =
                piece.kind() == SentencePart.Kind.ABOUT && !piece.features().has("cond");
        int at = aboutOthers ? piece.to() : piece.from();
        while (at < piece.to()) {
            Optional<Lexicon.Match> match = tongue.leavingOpen(sentence, at)
                    .filter(found -> piece.kind() != SentencePart.Kind.CLAUSE
                            || piece.features().has("open")
                            || !found.entry().category().equals("WILL"));
            if (match.isPresent()) {
                open.add(sentence.get(at)
                        .span()
                        .to(sentence.get(match.get().end() - 1).span()));
                if (piece.kind() == SentencePart.Kind.ABOUT) {
                    return open;
                }
            }
            at = match.map(Lexicon.Match::end).orElse(tongue.behindPretence(sentence, at));
        }
        return open;
    }
}
