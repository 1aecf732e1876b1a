/**
 * What is written and read as a whole: files that are there whole or not at all, folders that nobody else can write, texts of a
 * stated size.
 */
@NullMarked
package org.slugpeak.bridge.disk;

import org.jspecify.annotations.NullMarked;
