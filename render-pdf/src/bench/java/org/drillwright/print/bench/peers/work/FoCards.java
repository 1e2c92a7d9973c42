package org.drillwright.print.bench.peers.work;

import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.OutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.logging.LogManager;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.sax.SAXResult;
import javax.xml.transform.stream.StreamSource;
import org.apache.fop.apps.FOUserAgent;
import org.apache.fop.apps.FopFactory;
import org.apache.fop.apps.MimeConstants;
import org.drillwright.print.bench.peers.card.FontFiles;

/** Formatting objects by Apache FOP, tagged: {@code FoCards PAGE FONTS FILE}; answers the bytes of the file. */
public final class FoCards {

    private static final String SETTINGS =
            """
            <fop version="1.0"><accessibility>true</accessibility><renderers><renderer mime="application/pdf"><fonts>
            <font kerning="yes" embed-url="%s"><font-triplet name="Card" style="normal" weight="normal"/></font>
            <font kerning="yes" embed-url="%s"><font-triplet name="Card" style="normal" weight="bold"/></font>
            </fonts></renderer></renderers></fop>
            """;

    private FoCards() {}

    public static void main(String[] args) throws Exception {
        LogManager.getLogManager().reset();
        String page = Files.readString(Path.of(args[0]));
        FontFiles fonts = FontFiles.in(Path.of(args[1]));
        Path file = Path.of(args[2]);
        String settings =
                SETTINGS.formatted(fonts.regular().toUri(), fonts.bold().toUri());
        FopFactory factory = FopFactory.newInstance(
                file.toUri(), new ByteArrayInputStream(settings.getBytes(StandardCharsets.UTF_8)));
        Work.of(() -> write(page, factory, file), List.of(args));
    }

    private static long write(String page, FopFactory factory, Path file) throws Exception {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            FOUserAgent agent = factory.newFOUserAgent();
            var handler = factory.newFop(MimeConstants.MIME_PDF, agent, out).getDefaultHandler();
            TransformerFactory.newInstance()
                    .newTransformer()
                    .transform(new StreamSource(new StringReader(page)), new SAXResult(handler));
        }
        return Files.size(file);
    }
}
