package org.drillwright.register;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.source.Findings;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/**
 * Counts the lines of a record in the order of the file. A batch counts once it is whole, and only once, so that files of
 * two machines can be joined; a batch that was cut short counts for nothing and is told again by the next run.
 */
final class Ledger {

    /** A batch whose last line hasn't been read yet. */
    private record Open(Span at, Batch batch, int wanted, List<Placed> lines) {}

    private record Placed(Span at, RecordLine line) {}

    private final Findings findings;
    private final List<Batch> batches = new ArrayList<>();
    private final List<RecordLine> loose = new ArrayList<>();
    private final List<Entry> told = new ArrayList<>();
    private final Map<Entry, Span> takenBack = new LinkedHashMap<>();
    private final Net net = new Net();
    private final Set<String> ids = new HashSet<>();
    private Optional<Open> open = Optional.empty();

    Ledger(Findings findings) {
        this.findings = findings;
    }

    /** @param wanted how many lines it says it has */
    void begin(Span at, Batch batch, int wanted) {
        giveUp();
        open = Optional.of(new Open(at, batch, wanted, new ArrayList<>()));
    }

    void end(Span at, String id) {
        Optional<Open> ended =
                open.filter(one -> one.batch().id().equals(id) && one.lines().size() == one.wanted());
        if (ended.isEmpty() && open.isEmpty()) {
            findings.warning(
                    RecordRule.BATCH_BROKEN.id(),
                    at,
                    Message.of(Ledger.class, "batch.end.alone"),
                    Message.of(Ledger.class, "batch.end.alone.way"));
        }
        if (ended.isEmpty()) {
            giveUp();
        }
        ended.ifPresent(this::count);
        open = Optional.empty();
    }

    void add(Span at, RecordLine line) {
        Optional<Open> into = open.filter(one -> one.lines().size() < one.wanted());
        if (into.isPresent()) {
            into.get().lines().add(new Placed(at, line));
        } else {
            byHand(at, line);
        }
    }

    private void byHand(Span at, RecordLine line) {
        if (!line.takenBack() && net.of(line.entry()) > 0) {
            findings.warning(
                    RecordRule.LINE_TWICE.id(),
                    at,
                    Message.of(Ledger.class, "said.already"),
                    Message.of(Ledger.class, "counted.once"));
            return;
        }
        loose.add(line);
        count(at, line);
    }

    private void count(Open whole) {
        if (ids.add(whole.batch().id())) {
            List<RecordLine> lines = whole.lines().stream().map(Placed::line).toList();
            batches.add(new Batch(
                    whole.batch().id(),
                    whole.batch().date(),
                    whole.batch().named(),
                    whole.batch().plan(),
                    lines));
            whole.lines().forEach(placed -> count(placed.at(), placed.line()));
        }
    }

    private void count(Span at, RecordLine line) {
        net.add(line);
        if (line.takenBack()) {
            takenBack.put(line.entry(), at);
        } else {
            told.add(line.entry());
        }
    }

    private void giveUp() {
        open.ifPresent(one -> findings.warning(
                RecordRule.BATCH_BROKEN.id(),
                one.at(),
                Message.counted(Ledger.class, "batch.incomplete", one.wanted()),
                one.batch().named().isEmpty()
                        ? Message.of(Ledger.class, "record.once.more")
                        : Message.of(Ledger.class, "record.again", one.batch().named())));
        open = Optional.empty();
    }

    /** What stands at the end of the file. */
    ReadHistory closed(Members members, RecordForm form) {
        giveUp();
        takenBack.forEach((entry, at) -> {
            if (net.of(entry) < 0) {
                findings.warning(
                        RecordRule.TAKES_BACK_NOTHING.id(),
                        at,
                        Message.of(Ledger.class, "takes.back.nothing"),
                        Message.of(Ledger.class, "takes.back.nothing.way"));
            }
        });
        Map<Entry, Integer> left = new HashMap<>();
        List<Entry> standing = told.stream()
                .filter(entry -> left.merge(entry.plain(), 1, Integer::sum) <= net.of(entry))
                .toList();
        List<Entry> ofClasses =
                standing.stream().filter(entry -> entry.event().isOfAClass()).toList();
        List<Entry> ofTwo =
                standing.stream().filter(entry -> entry.event().isOfTwo()).toList();
        return new ReadHistory(
                new History(ofClasses), batches, loose, members, new Together(ofTwo), form, findings.list());
    }
}
