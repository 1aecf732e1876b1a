package org.slugpeak.cli.moment;

/**
 * A call that was made. Immutable; any thread may use it.
 *
 * @param number of calls in this session so far, 1 for the first: whoever looks now and then sees by it that another was made
 * @param tNanos when, nanoseconds from the first reading
 * @param call what for
 */
public record Called(long number, long tNanos, Call call) {}
