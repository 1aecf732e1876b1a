/**
 * Every sentence that a person reads or hears. Records come in, and nothing is decided here;
 * {@link org.slugpeak.cli.words.RecordSentences} says each kind in its words, and what the words are stands in one file a language.
 */
@NullMarked
package org.slugpeak.cli.words;

import org.jspecify.annotations.NullMarked;
