/** What the arithmetic commands print: tables and, on demand, the formulas behind them. */
@NullMarked
package org.slugpeak.cli.arithmetic;

import org.jspecify.annotations.NullMarked;
