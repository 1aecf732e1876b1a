package org.slugpeak.cli.sessions;

import java.util.Optional;

/**
 * A file of the folder that was looked into. Immutable; any thread may use it.
 *
 * @param stamp by which it is known again
 * @param session what it tells; empty where it is no session log
 * @param said what was told and noted in it, for searching; empty where nothing was
 */
record ReadLog(LogStamp stamp, Optional<KeptSession> session, String said) {}
