package org.slugpeak.cli.sessions;

/**
 * A session and where its log is. Immutable; any thread may use it.
 *
 * @param bench whose log it is
 * @param folder where that bench keeps its logs
 * @param file name of the log below the folder
 * @param session what is known of it
 */
public record FoundSession(String bench, String folder, String file, KeptSession session) {}
