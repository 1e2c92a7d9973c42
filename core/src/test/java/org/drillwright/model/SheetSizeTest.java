package org.drillwright.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetSizeTest {

    /** CLDR 46, supplemental/measurementData.json of cldr-core: {@code paperSize}, of which 001 (the world) is A4. */
    @ParameterizedTest
    @CsvSource({
        "en-US, LETTER", "en-CA, LETTER", "fr-CA, LETTER", "es-MX, LETTER", "es-CL, LETTER", "es-CO, LETTER",
                "es-CR, LETTER",
        "es-GT, LETTER", "es-NI, LETTER", "es-PA, LETTER", "es-PR, LETTER", "es-SV, LETTER", "es-VE, LETTER",
                "en-BZ, LETTER",
        "en-PH, LETTER", "en-GB, A4", "de-CH, A4", "es-AR, A4", "es-ES, A4", "en, A4", "und, A4"
    })
    void a_region_prints_on_its_paper(String tag, SheetSize sheet) {
        assertEquals(sheet, SheetSize.usualIn(Locale.forLanguageTag(tag)));
    }
}
