package org.drillwright.read;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Nearest;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;
import org.drillwright.wording.Plain;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Reads the keys of one mapping, each asked for by name; at the end, {@link #finish()} reports those nobody asked for. */
final class MappingReader implements Keys {

    /** So many words that are known are told where one is not. */
    private static final int TOLD = 12;

    private static final Pattern WHOLE = Pattern.compile("\\d{1,6}");
    private static final Pattern SECONDS = Pattern.compile("\\d{1,4}([.,]\\d{1,3})?");
    private static final Pattern METRES = Pattern.compile("\\d{1,3}([.,]\\d{1,2})?");
    private static final Pattern TIME = Pattern.compile("(?:[01][0-9]|2[0-3]):[0-5][0-9]");

    private final NodeReader reader;
    private final FieldPath path;
    private final Span span;
    private final Map<String, NodeTuple> tuples = new LinkedHashMap<>();
    private final Set<String> asked = new LinkedHashSet<>();
    private final Set<String> missing = new LinkedHashSet<>();
    private final Set<String> dispensable = new HashSet<>();
    private boolean keyTwice;

    MappingReader(NodeReader reader, MappingNode mapping, FieldPath path) {
        this.reader = reader;
        this.path = path;
        this.span = reader.span(mapping);
        for (NodeTuple tuple : mapping.getValue()) {
            take(tuple);
        }
    }

    private void take(NodeTuple tuple) {
        Optional<String> key = reader.keyText(tuple.getKeyNode());
        if (key.isEmpty()) {
            return;
        }
        NodeTuple first = tuples.putIfAbsent(key.get(), tuple);
        if (first != null && !(keyTwice && isCount())) {
            reportTwice(key.get(), first, tuple);
            keyTwice = true;
        }
    }

    private boolean isCount() {
        return path.text().matches("steps/\\d+");
    }

    private void reportTwice(String key, NodeTuple earlier, NodeTuple tuple) {
        Span again = reader.span(tuple.getKeyNode());
        int first = lineOf(reader.span(earlier.getKeyNode()));
        findings()
                .error(
                        ReadingRule.KEY_TWICE.id(),
                        again,
                        Message.of(MappingReader.class, "key.twice", key, first),
                        isCount()
                                ? Message.of(MappingReader.class, "key.twice.count")
                                        .then(dashed(again))
                                : Message.of(MappingReader.class, "keep.one"));
    }

    private Message dashed(Span key) {
        Span line = findings().file().line(lineOf(key));
        String original = findings().file().slice(line);
        String indent = Mend.indent(original);
        return Mend.advice(original, indent.substring(Math.min(2, indent.length())) + "- " + original.strip());
    }

    private int lineOf(Span span) {
        return findings().file().position(span.start()).line();
    }

    private Findings findings() {
        return reader.findings();
    }

    private Optional<NodeTuple> ask(String key) {
        asked.add(key);
        return Optional.ofNullable(tuples.get(key));
    }

    private <T> Optional<T> ask(String key, Function<Place, Optional<T>> read) {
        return ask(key).flatMap(tuple ->
                read.apply(new Place(path.key(key), reader.span(tuple.getKeyNode()), tuple.getValueNode())));
    }

    private record Place(FieldPath path, Span key, Node node) {}

    @Override
    public Optional<String> textToCome(String key, int longest) {
        return ask(key).filter(tuple -> !(tuple.getValueNode() instanceof ScalarNode words
                        && words.getValue().isBlank()))
                .flatMap(tuple -> text(key, longest));
    }

    @Override
    public Optional<String> text(String key, int longest) {
        return ask(key, place -> reader.text(place.path(), place.key(), place.node(), longest));
    }

    /** A key that is missing is reported by {@link #finish()}, unless it stands there mistyped. */
    @Override
    public void need(String key) {
        needOneOf(List.of(key));
    }

    @Override
    public void needOneOf(List<String> keys) {
        if (keys.stream().noneMatch(tuples::containsKey)) {
            missing.add(keys.get(keys.size() - 1));
        }
    }

    private void reportMissing(String key) {
        findings()
                .error(
                        ReadingRule.KEY_MISSING.id(),
                        Span.at(span.start()),
                        Message.of(MappingReader.class, "key.missing", key),
                        Message.of(MappingReader.class, "key.missing.way", key));
    }

    @Override
    public List<String> texts(String key, int longest) {
        return ask(key, place -> Optional.of(reader.texts(place.path(), place.key(), place.node(), longest)))
                .orElse(List.of());
    }

    /** A word that is none of the choices is a finding that names the nearest. */
    @Override
    public <T> Optional<T> choice(String key, List<T> choices, Function<T, String> word) {
        return text(key, ReadingLimits.SHORT_TEXT).flatMap(written -> pick(key, path.key(key), written, choices, word));
    }

    private <T> Optional<T> pick(String key, FieldPath at, String written, List<T> choices, Function<T, String> word) {
        Optional<T> found = called(written, choices, word);
        if (found.isPresent()) {
            return found;
        }
        List<String> words = choices.stream().map(word).toList();
        Optional<T> elsewhere = ValueWords.own(key, written, words).flatMap(own -> called(own, choices, word));
        if (elsewhere.isEmpty()) {
            unknownWord(at, written, words);
        }
        return elsewhere;
    }

    private static <T> Optional<T> called(String written, List<T> choices, Function<T, String> word) {
        return choices.stream()
                .filter(choice -> Plain.fold(word.apply(choice)).equals(Plain.fold(written)))
                .findFirst();
    }

    @Override
    public <T> List<T> choices(String key, List<T> choices, Function<T, String> word) {
        List<String> written = texts(key, ReadingLimits.SHORT_TEXT);
        return IntStream.range(0, written.size())
                .mapToObj(at -> pick(key, path.key(key).item(at), written.get(at), choices, word))
                .flatMap(Optional::stream)
                .toList();
    }

    @Override
    public FieldPath path() {
        return path;
    }

    @Override
    public Optional<String> name(String key, List<String> known) {
        Optional<String> name = text(key, ReadingLimits.SHORT_TEXT)
                .map(written -> known.contains(written)
                        ? written
                        : ValueWords.own(key, written, known).orElse(written));
        name.ifPresent(written -> mustBeKnown(path.key(key), written, known));
        return name;
    }

    @Override
    public List<String> names(String key, List<String> known) {
        List<String> names = texts(key, ReadingLimits.SHORT_TEXT);
        for (int at = 0; at < names.size(); at++) {
            mustBeKnown(path.key(key).item(at), names.get(at), known);
        }
        return names;
    }

    @Override
    public Optional<String> nameOfThisFile(String key, List<String> known) {
        return choice(key, known, name -> name);
    }

    private void mustBeKnown(FieldPath at, String written, List<String> known) {
        if (!known.contains(written)) {
            unknownWord(at, written, known);
        }
    }

    /** Reports a word that is not among those known here. */
    private void unknownWord(FieldPath at, String written, Collection<String> known) {
        Optional<Message> nearest = Nearest.meant(Plain.fold(written), known);
        findings()
                .error(
                        ReadingRule.UNKNOWN_WORD.id(),
                        reader.places().span(at),
                        Nearest.unknown(written),
                        nearest.filter(near -> known.size() > TOLD)
                                .orElseGet(() -> nearest.orElse(Message.none()).then(told(known))));
    }

    /** The first of them; nobody reads hundreds of drills in a finding. */
    private static Message told(Collection<String> known) {
        int more = known.size() - TOLD;
        Message first = Message.words(known.stream().limit(TOLD).toList());
        return more > 0
                ? Message.of(MappingReader.class, "known.and.more", first, more)
                : Message.of(MappingReader.class, "known", first);
    }

    @Override
    public OptionalInt wholeNumber(String key, int least, int most) {
        Optional<String> written = text(key, ReadingLimits.SHORT_TEXT);
        if (written.isEmpty()) {
            return OptionalInt.empty();
        }
        if (WHOLE.matcher(written.get()).matches()) {
            int number = Integer.parseInt(written.get());
            if (number >= least && number <= most) {
                return OptionalInt.of(number);
            }
        }
        wrong(
                key,
                Message.of(MappingReader.class, "needs.whole.number", key, least, most),
                Message.of(MappingReader.class, "needs.whole.number.way", least + 1));
        return OptionalInt.empty();
    }

    @Override
    public Optional<Duration> seconds(String key) {
        Optional<String> written = text(key, ReadingLimits.SHORT_TEXT);
        if (written.isPresent() && SECONDS.matcher(written.get()).matches()) {
            Duration duration = Duration.ofMillis(new BigDecimal(written.get().replace(',', '.'))
                    .movePointRight(3)
                    .longValueExact());
            if (!duration.isZero() && duration.compareTo(Duration.ofHours(1)) <= 0) {
                return Optional.of(duration);
            }
        }
        written.ifPresent(text -> wrong(key, "needs.seconds"));
        return Optional.empty();
    }

    @Override
    public OptionalInt metres(String key, boolean above0) {
        Optional<String> written = text(key, ReadingLimits.SHORT_TEXT);
        if (written.isPresent() && METRES.matcher(written.get()).matches()) {
            BigDecimal metres = new BigDecimal(written.get().replace(',', '.'));
            if (metres.signum() > 0 || !above0) {
                return OptionalInt.of(metres.movePointRight(2).intValueExact());
            }
        }
        written.ifPresent(text -> wrong(key, "needs.metres"));
        return OptionalInt.empty();
    }

    @Override
    public Optional<Boolean> yesOrNo(String key) {
        Optional<String> written = text(key, ReadingLimits.SHORT_TEXT).map(text -> text.toLowerCase(Locale.ROOT));
        if (written.isPresent() && List.of("true", "yes").contains(written.get())) {
            return Optional.of(true);
        }
        if (written.isPresent() && List.of("false", "no").contains(written.get())) {
            return Optional.of(false);
        }
        written.ifPresent(text -> wrong(key, "needs.yes.or.no"));
        return Optional.empty();
    }

    @Override
    public Optional<LocalDate> date(String key) {
        Optional<String> written = text(key, ReadingLimits.SHORT_TEXT);
        try {
            return written.map(LocalDate::parse);
        } catch (DateTimeParseException problem) {
            wrong(key, "needs.date");
            return Optional.empty();
        }
    }

    @Override
    public Optional<LocalTime> time(String key) {
        Optional<String> written = text(key, ReadingLimits.SHORT_TEXT);
        if (written.isPresent() && TIME.matcher(written.get()).matches()) {
            return Optional.of(LocalTime.parse(written.get()));
        }
        written.ifPresent(text -> wrong(key, "needs.time"));
        return Optional.empty();
    }

    /** @param words key of what is said of it; the way out stands under {@code words.way} */
    private void wrong(String key, String words) {
        wrong(key, Message.of(MappingReader.class, words, key), Message.of(MappingReader.class, words + ".way"));
    }

    private void wrong(String key, Message what, Message wayOut) {
        findings().error(ReadingRule.WRONG_KIND.id(), reader.places().span(path.key(key)), what, wayOut);
    }

    @Override
    public <T> T dispensable(String key, Supplier<T> read) {
        dispensable.add(key);
        return reader.losing(path.key(key), read);
    }

    @Override
    public <T> Optional<T> group(String key, Function<Keys, T> read) {
        return ask(key, place -> reader.mapping(place.path(), place.key(), place.node()))
                .map(read);
    }

    @Override
    public <T> List<T> groups(String key, int most, Function<Keys, T> read) {
        return ask(key, place -> Optional.of(readItems(place, most, read))).orElse(List.of());
    }

    private <T> List<T> readItems(Place place, int most, Function<Keys, T> read) {
        List<Node> items = reader.items(place.path(), place.key(), place.node(), most);
        if (place.path().equals(FieldPath.of("steps"))) {
            DashTooMany.report(items, reader);
        }
        return IntStream.range(0, items.size())
                .mapToObj(at -> reader.mapping(place.path().item(at), reader.span(items.get(at)), items.get(at)))
                .flatMap(Optional::stream)
                .map(read)
                .toList();
    }

    @Override
    public <T> Optional<T> textOrGroup(String key, int longest, Function<String, T> text, Function<Keys, T> group) {
        NodeTuple tuple = tuples.get(key);
        return tuple != null && tuple.getValueNode() instanceof MappingNode
                ? group(key, group)
                : text(key, longest).map(text);
    }

    @Override
    public <T> Map<String, T> byName(BiFunction<Keys, String, Optional<T>> read) {
        Map<String, T> values = new LinkedHashMap<>();
        for (String name : tuples.keySet()) {
            read.apply(this, name).ifPresent(value -> values.put(name, value));
        }
        return values;
    }

    @Override
    public void finish() {
        for (Map.Entry<String, NodeTuple> entry : tuples.entrySet()) {
            if (!asked.contains(entry.getKey())) {
                reportUnknown(entry.getKey(), reader.span(entry.getValue().getKeyNode()));
            }
        }
        for (String key : missing) {
            if (dispensable.contains(key)) {
                reader.losing(path.key(key), () -> reportMissing(key));
            } else {
                reportMissing(key);
            }
        }
    }

    /** A key that may be another one mistyped has taken a value away; one that is near to none has not. */
    private void reportUnknown(String key, Span at) {
        UnknownKey unknown = new UnknownKey(key, at, path, reader.keys());
        Optional<String> meant = Nearest.to(Plain.fold(key), asked).or(() -> missingList(key));
        if (meant.isEmpty() && !unknown.isMisplaced()) {
            reader.losing(path.key(key), () -> unknown.report(meant, asked, findings()));
            return;
        }
        meant.ifPresent(missing::remove);
        unknown.report(meant, asked, findings());
    }

    /** The one list that is missing, where a list stands under a key that is none. */
    private Optional<String> missingList(String key) {
        boolean isList = Optional.ofNullable(tuples.get(key)).map(NodeTuple::getValueNode).stream()
                .anyMatch(SequenceNode.class::isInstance);
        List<String> lists = missing.stream().filter(reader.keys()::isList).toList();
        return isList && lists.size() == 1 ? Optional.of(lists.get(0)) : Optional.empty();
    }
}
