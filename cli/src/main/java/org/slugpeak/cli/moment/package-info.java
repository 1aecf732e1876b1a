/**
 * The one state that every display tells of: what the hand is to do now, where the reading stands, what is asked for and what is wrong.
 * {@link org.slugpeak.cli.moment.MomentKeeper} makes a {@link org.slugpeak.cli.moment.Moment} of the session's records and nothing
 * else; word, sign, line and sound are all taken from it, so that they cannot disagree. Nothing here knows of terminals,
 * loudspeakers or browsers.
 */
@NullMarked
package org.slugpeak.cli.moment;

import org.jspecify.annotations.NullMarked;
