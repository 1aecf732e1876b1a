package org.slugpeak.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.bridge.source.BadConfiguration;

class PagePlaceTest {

    private static final PageToken TOKEN = new PageToken("token");

    @Test
    void unlessAnAddressIsNamedItIsThisComputerAlone() {
        PagePlace place = PagePlace.here(8455);
        assertTrue(place.isHereOnly());
        assertEquals("http://127.0.0.1:8455/token/", place.url(8455, TOKEN));
        assertEquals(Set.of("127.0.0.1:8455", "localhost:8455"), place.hosts(8455));
    }

    /** All addresses at once, those of documentation (RFC 5737, RFC 3849), which no computer has, and what is no address. */
    @ParameterizedTest
    @ValueSource(strings = {"0.0.0.0", "::", "192.0.2.7", "2001:db8::7", "no such name"})
    void whatIsNotOneAddressOfThisComputerIsRefusedWithThoseThatAre(String host) {
        BadConfiguration refused = assertThrows(BadConfiguration.class, () -> PagePlace.at(host, 8455));
        String message = String.valueOf(refused.getMessage());
        assertTrue(
                message.startsWith(host + " is no single address of this computer: --page-host takes one of "),
                message);
        assertTrue(message.contains("127.0.0.1"), message);
    }

    @Test
    void anAddressOfThisComputerIsTaken() throws BadConfiguration {
        PagePlace place = PagePlace.at("127.0.0.1", 8455);
        assertEquals(Set.of("127.0.0.1:8455"), place.hosts(8455));
    }
}
