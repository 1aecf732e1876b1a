package org.slugpeak.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who gets in, and to what. The headers are those of the Fetch standard (fetch.spec.whatwg.org) and of Fetch Metadata (W3C). */
class DoorTest {

    private static final Door DOOR = new Door(new PageToken("right"), Set.of("127.0.0.1:8455", "localhost:8455"));

    /** A dot stands for a header that is not there. */
    @ParameterizedTest
    @CsvSource({
        // What a browser sends for the page itself, its files, its events and its buttons.
        "GET,  /right/,           127.0.0.1:8455, .,                     none,        document, ., PAGE",
        "GET,  /right/,           localhost:8455, .,                     .,           .,        ., PAGE",
        "GET,  /right/page.js,    127.0.0.1:8455, http://127.0.0.1:8455, same-origin, script,   ., FILE",
        "GET,  /right/events,     127.0.0.1:8455, .,                     same-origin, empty,    ., EVENTS",
        "POST, /right/keys,       127.0.0.1:8455, http://127.0.0.1:8455, same-origin, empty, application/json, KEY",
        "GET,  /right,            127.0.0.1:8455, .,                     none,        document, ., TO_PAGE",
        // An address that was followed from a message.
        "GET,  /right/,           127.0.0.1:8455, .,                     cross-site,  document, ., PAGE",
        // Wrong tokens, whatever else is right.
        "GET,  /wrong/,           127.0.0.1:8455, .,                     none,        document, ., WRONG_TOKEN",
        "GET,  /rightx/,          127.0.0.1:8455, .,                     none,        document, ., WRONG_TOKEN",
        "GET,  /righ/,            127.0.0.1:8455, .,                     none,        document, ., WRONG_TOKEN",
        "GET,  /,                 127.0.0.1:8455, .,                     none,        document, ., WRONG_TOKEN",
        "GET,  //right/,          127.0.0.1:8455, .,                     none,        document, ., WRONG_TOKEN",
        "GET,  /wrong/events,     127.0.0.1:8455, .,                     same-origin, empty,    ., WRONG_TOKEN",
        "POST, /wrong/keys,       127.0.0.1:8455, http://127.0.0.1:8455, same-origin, empty, application/json, WRONG_TOKEN",
        "GET,  /../right/,        127.0.0.1:8455, .,                     none,        document, ., WRONG_TOKEN",
        // Called by a name that is not ours: a page elsewhere whose name was made to lead here.
        "GET,  /right/,           evil.example:8455, .,                  none,        document, ., FOREIGN",
        "GET,  /right/,           127.0.0.1:80,   .,                     none,        document, ., FOREIGN",
        "GET,  /right/,           .,              .,                     none,        document, ., FOREIGN",
        // From a page elsewhere.
        "GET,  /right/events,     127.0.0.1:8455, http://evil.example,   cross-site,  empty,    ., FOREIGN",
        "GET,  /right/events,     127.0.0.1:8455, .,                     cross-site,  empty,    ., FOREIGN",
        "GET,  /right/events,     127.0.0.1:8455, .,                     same-site,   empty,    ., FOREIGN",
        "GET,  /right/page.js,    127.0.0.1:8455, .,                     cross-site,  script,   ., FOREIGN",
        "GET,  /right/,           127.0.0.1:8455, .,                     cross-site,  iframe,   ., FOREIGN",
        "POST, /right/keys,       127.0.0.1:8455, http://evil.example,   .,           .,  application/json, FOREIGN",
        "POST, /right/keys,       127.0.0.1:8455, https://127.0.0.1:8455, .,          .,  application/json, FOREIGN",
        "POST, /right/keys,       127.0.0.1:8455, null,                  .,           .,  application/json, FOREIGN",
        // A program that says nothing of where it comes from, and a form, which can send anywhere without asking.
        "POST, /right/keys,       127.0.0.1:8455, .,                     .,           .,  application/json, FOREIGN",
        "POST, /right/keys,       127.0.0.1:8455, http://127.0.0.1:8455, same-origin, .,        text/plain, FOREIGN",
        // The wrong way.
        "POST, /right/,           127.0.0.1:8455, http://127.0.0.1:8455, same-origin, .,        ., WRONG_METHOD",
        "GET,  /right/keys,       127.0.0.1:8455, .,                     same-origin, .,        ., WRONG_METHOD",
        "OPTIONS, /right/keys,    127.0.0.1:8455, http://evil.example,   cross-site,  .,        ., WRONG_METHOD",
        "TRACE, /right/,          127.0.0.1:8455, .,                     none,        .,        ., WRONG_METHOD"
    })
    void everyRequestMeetsItsAnswer(
            String method,
            String path,
            String host,
            String origin,
            String site,
            String destination,
            String type,
            Door.Entry entry) {
        Asked asked = new Asked(
                method,
                path,
                there(host),
                there(origin),
                there(site),
                there(destination),
                there(type).orElse(""));
        assertEquals(entry, DOOR.entry(asked));
    }

    private static Optional<String> there(String header) {
        return Optional.of(header).filter(text -> !text.equals("."));
    }

    /** 128 bits in the 64 letters of RFC 4648, section 5, without padding: 22 of them. */
    @Test
    void aTokenIsNewEachTimeAndFitsIntoAnAddress() {
        PageToken token = PageToken.fresh();
        assertTrue(token.text().matches("[A-Za-z0-9_-]{22}"), token.text());
        assertNotEquals(token, PageToken.fresh());
        assertTrue(token.is(token.text()));
        assertFalse(token.is(token.text().toLowerCase(java.util.Locale.ROOT) + "x"));
    }
}
