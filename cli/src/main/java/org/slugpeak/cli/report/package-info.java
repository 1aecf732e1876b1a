/** What a person keeps: the report of one or more sessions as a page, as plain text, or as readings. */
@NullMarked
package org.slugpeak.cli.report;

import org.jspecify.annotations.NullMarked;
