package org.slugpeak.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class EndReasonTest {

    @ParameterizedTest
    @EnumSource
    void itsCodeNamesItAgain(EndReason.Known reason) {
        assertSame(reason, EndReason.ofCode(reason.code()));
    }

    @Property(tries = 200)
    void whateverALogSaysIsWrittenAgainAsItStood(@ForAll String code) {
        assertEquals(code, EndReason.ofCode(code).code());
    }
}
