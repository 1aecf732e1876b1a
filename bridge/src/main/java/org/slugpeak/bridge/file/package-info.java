/**
 * Readings from text: a CSV file, or lines that another program writes to standard input. The one way in is
 * {@link org.slugpeak.bridge.file.CsvSource}, whose documentation describes the text.
 */
@NullMarked
package org.slugpeak.bridge.file;

import org.jspecify.annotations.NullMarked;
