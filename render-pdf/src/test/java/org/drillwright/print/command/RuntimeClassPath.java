package org.drillwright.print.command;

import com.fasterxml.jackson.core.JsonFactory;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.logging.LogFactory;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.io.RandomAccessRead;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.drillwright.model.Drill;
import org.jspecify.annotations.NullMarked;
import org.yaml.snakeyaml.Yaml;
import picocli.CommandLine;

/** What the runnable archive is made of, told by one class of each part: the tests' class path holds more. */
public final class RuntimeClassPath {

    private static final List<Class<?>> OURS = List.of(Main.class, Drill.class);

    private static final List<Class<?>> OTHERS = List.of(
            PDDocument.class,
            TTFParser.class,
            RandomAccessRead.class,
            LogFactory.class,
            CommandLine.class,
            Yaml.class,
            JsonFactory.class,
            NullMarked.class);

    private static final String FONT = "/net/sf/jasperreports/fonts/dejavu/DejaVuSansCondensed.ttf";

    private RuntimeClassPath() {}

    /** The archives that others made. */
    static List<Path> others() {
        List<Path> archives =
                new ArrayList<>(OTHERS.stream().map(RuntimeClassPath::home).toList());
        String font = String.valueOf(Main.class.getResource(FONT));
        archives.add(Path.of(URI.create(font.substring("jar:".length(), font.indexOf('!')))));
        return archives;
    }

    public static List<Path> all() {
        List<Path> all =
                new ArrayList<>(OURS.stream().map(RuntimeClassPath::home).toList());
        all.addAll(others());
        return all;
    }

    private static Path home(Class<?> one) {
        try {
            return Path.of(
                    one.getProtectionDomain().getCodeSource().getLocation().toURI());
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
