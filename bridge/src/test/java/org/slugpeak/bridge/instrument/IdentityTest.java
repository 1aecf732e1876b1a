package org.slugpeak.bridge.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The four fields of IEEE 488.2 section 10.14, and what is met in their place (common practice, no source). */
class IdentityTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "EMBER FELL,BM-450,12345,1.07|EMBER FELL BM-450, firmware 1.07",
                "EMBER FELL,BM-450,0,0|EMBER FELL BM-450",
                "EMBER FELL,BM-450,1.07|EMBER FELL BM-450",
                "*IDN EMBER FELL,BM-450,00-00-00-13-22,1.01.01.10R1,20.234.3|EMBER FELL BM-450",
                "*IDN? EMBER FELL,BM-450,0,2|EMBER FELL BM-450, firmware 2",
                " EMBER FELL , BM-450 , 0 , 2 |EMBER FELL BM-450, firmware 2",
                "BM-450,|BM-450",
                ",,,|an instrument without a name"
            })
    void whateverComesTheMeterGetsAName(String answer, String name) {
        assertEquals(name, Identity.of(answer).name());
    }
}
