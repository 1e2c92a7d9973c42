package org.drillwright.print.bench.peers.work;

import com.openhtmltopdf.extend.FSCacheEx;
import com.openhtmltopdf.extend.FSCacheValue;
import com.openhtmltopdf.extend.impl.FSDefaultCacheStore;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.drillwright.print.bench.peers.card.FontFiles;

/** A page by openhtmltopdf, tagged: {@code HtmlCards PAGE FONTS FILE}; answers the bytes of the file. */
public final class HtmlCards {

    private HtmlCards() {}

    public static void main(String[] args) throws Exception {
        XRLog.setLoggingEnabled(false);
        String page = Files.readString(Path.of(args[0]));
        FontFiles fonts = FontFiles.in(Path.of(args[1]));
        Path file = Path.of(args[2]);
        FSCacheEx<String, FSCacheValue> measures = new FSDefaultCacheStore();
        Work.of(() -> write(page, fonts, measures, file), List.of(args));
    }

    private static long write(String page, FontFiles fonts, FSCacheEx<String, FSCacheValue> measures, Path file)
            throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePdfUaAccessibility(true);
            builder.useCacheStore(PdfRendererBuilder.CacheStore.PDF_FONT_METRICS, measures);
            builder.useFont(fonts.regular().toFile(), "Card", 400, FontStyle.NORMAL, true);
            builder.useFont(fonts.bold().toFile(), "Card", 700, FontStyle.NORMAL, true);
            builder.withHtmlContent(page, file.toUri().toString());
            builder.toStream(out);
            builder.run();
        }
        return Files.size(file);
    }
}
