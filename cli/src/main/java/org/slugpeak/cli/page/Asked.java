package org.slugpeak.cli.page;

import java.util.Optional;

/**
 * What a request says of itself. Immutable; any thread may use it.
 *
 * @param method as in HTTP
 * @param path as it was sent, not decoded
 * @param host of the server, as the asker calls it
 * @param origin of the page that asks, where the browser tells
 * @param site how that page stands to this one, where the browser tells ({@code Sec-Fetch-Site})
 * @param destination what the answer is for, where the browser tells ({@code Sec-Fetch-Dest})
 * @param type of what is sent along; may be empty
 */
record Asked(
        String method,
        String path,
        Optional<String> host,
        Optional<String> origin,
        Optional<String> site,
        Optional<String> destination,
        String type) {}
