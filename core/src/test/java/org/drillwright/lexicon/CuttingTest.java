package org.drillwright.lexicon;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A text cut into sentences and words, as docs/language.md of core tells it, in a small table of its own. A form of the program; no fact of the trade. */
class CuttingTest {

    private final Lexicon english = LexiconFile.read(List.of(
            "whole don't do not",
            "whole w with",
            "whole @ at",
            "trailing 's s",
            "trailing ' s",
            "short lge lunge",
            "short ie that is",
            "shortened opp",
            "clipped opposition riposte recover disengage disengagement reprise remise",
            "V lunge|parry"));

    private final Lexicon french = LexiconFile.read(List.of("leading l' le", "whole au a le", "whole l'on on"));

    /** Words parted by blanks, sentences by bars. */
    private static String cut(Lexicon lexicon, String text) {
        return lexicon.sentences(text).stream()
                .map(sentence -> sentence.stream().map(Token::folded).collect(Collectors.joining(" ")))
                .collect(Collectors.joining(" | "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '~', textBlock = """
            Parry. Riposte!                     ; parry | riposte
            Stop? No! Go                        ; stop | no | go
            P4, x2                              ; p 4 , x 2
            2×                                  ; 2 x
            counter-riposte                     ; counter riposte
            advance - lunge                     ; advance , lunge
            advance — lunge                     ; advance , lunge
            advance -> lunge                    ; advance , lunge
            sixte/octave                        ; sixte , octave
            hit w/ a lunge                      ; hit with a lunge
            lunge (deep) [now]                  ; lunge , deep , , now ,
            leaders: lunge                      ; leaders : lunge
            mask = on                           ; mask : on
            step + lunge & hit                  ; step & lunge & hit
            lunge @ the head                    ; lunge at the head
            Call "Two steps forward".           ; call <quote>
            Call ‘one two’ now                  ; call <quote> now
            Don't lunge                         ; do not lunge
            partner's blade                     ; partner s blade
            the partners' blades                ; the partners s blades
            ½ step                              ; ½ step
            1/2 step                            ; 1/2 step
            eng. 4 now                          ; eng , 4 now
            eng., hold                          ; eng , , hold
            rip., hold                          ; rip , hold
            Ext. high                           ; ext , high
            lge. high                           ; lunge high
            with opp. high                      ; with opp high
            lge. High                           ; lunge | high
            lge. P4                             ; lunge , p 4
            lge.-step                           ; lunge step
            i.e. lunge                          ; that is lunge
            1. lunge 2. parry                   ; 1 : lunge | 2 : parry
            a) lunge b) parry                   ; lunge | parry
            P4-R-lge                            ; p 4 , r lunge
            well-known-thing                    ; well known thing
            opp-lge-rip                         ; opp , lunge , rip
            adv-lge-hit                         ; adv lunge hit
            lge.: high                          ; lunge : high
            Now 1. lunge                        ; now 1 , lunge
            2. lunge                            ; 2 , lunge
            i.x. lunge                          ; i , x , lunge
            12 steps. 3: hold                   ; 12 steps | 3 : hold
            Épée                                ; epee
            """)
    void an_english_text(String text, String cut) {
        assertEquals(cut, cut(english, text));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '~', textBlock = """
            l'épée au flanc      ; le epee a le flanc
            L’épaule             ; le epaule
            l'on pare            ; on pare
            aujourd'hui          ; aujourdhui
            « Rompez »           ; <quote>
            """)
    void a_french_text(String text, String cut) {
        assertEquals(cut, cut(french, text));
    }

    /** A word has its place in the text as written; words written as one share it. */
    @ParameterizedTest
    @CsvSource({
        "'  Parry 4', 0, 2, 7",
        "'  Parry 4', 1, 8, 9",
        "'so don''t', 1, 3, 8",
        "'so don''t', 2, 3, 8",
        "'(lunge)', 1, 1, 6"
    })
    void a_word_keeps_its_place(String text, int word, int start, int end) {
        Token token = english.words(text).get(word);
        assertEquals(start, token.span().start());
        assertEquals(end, token.span().end());
    }

    @ParameterizedTest
    @CsvSource({"COUPÉ, coupe, coupé", "coupe, coupe, coupe", "Straße, strasse, straße"})
    void a_word_keeps_its_accents_beside(String text, String folded, String written) {
        assertEquals(folded, english.words(text).get(0).folded());
        assertEquals(written, english.words(text).get(0).written());
    }

    /** Words cut short at will: by the end, by the middle, by vowels; never what may stand for two, or is listed. */
    @ParameterizedTest
    @CsvSource({
        "oppo, opposition",
        "oppn, opposition",
        "ripo, riposte",
        "ripos, riposte",
        "rpst, riposte",
        "rcvr, recover",
        "recvr, recover",
        "ripostes, ripostes",
        "disengs, disengages",
        "dsngg, disengage",
        "opn, opposition",
        "opon, opposition",
        "oppstn, opposition",
        "rite, riposte",
        "dsgg, disengage",
        "rpt, riposte",
        "rps, rps",
        "rem, remise",
        "rep, reprise",
        "diseng, disengage",
        "disengagem, disengagement",
        "re, re",
        "lunge, lunge",
        "riposte, riposte",
        "rxst, rxst",
        "xip, xip"
    })
    void a_word_cut_short_is_put_in_full(String cut, String full) {
        assertEquals(
                full,
                english.inFull(english.words(cut), word -> word.equals("lunge"))
                        .get(0)
                        .folded());
    }
}
