package org.slugpeak.cli.program;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.encoder.PatternLayoutEncoder;
import ch.qos.logback.classic.spi.Configurator;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.Appender;
import ch.qos.logback.core.ConsoleAppender;
import ch.qos.logback.core.OutputStreamAppender;
import ch.qos.logback.core.rolling.FixedWindowRollingPolicy;
import ch.qos.logback.core.rolling.RollingFileAppender;
import ch.qos.logback.core.rolling.SizeBasedTriggeringPolicy;
import ch.qos.logback.core.spi.ContextAwareBase;
import ch.qos.logback.core.status.NopStatusListener;
import ch.qos.logback.core.util.FileSize;
import org.slf4j.Logger;

/**
 * Sends log messages to a file in the user's state folder, and with {@code --verbose} to standard error too. Found by
 * Logback itself when the first logger is asked for, so that a start without a message does not pay for it.
 */
public final class LogSetup extends ContextAwareBase implements Configurator {

    private static final String PATTERN = "%d{yyyy-MM-dd HH:mm:ss.SSS} %-5level %logger{20} - %msg%n";
    private static final long LARGEST_FILE_BYTES = 1_000_000;

    @Override
    public ExecutionStatus configure(LoggerContext context) {
        context.getStatusManager().add(new NopStatusListener());
        ch.qos.logback.classic.Logger root = context.getLogger(Logger.ROOT_LOGGER_NAME);
        root.setLevel(Level.INFO);
        root.addAppender(file(context));
        if (Boolean.getBoolean("slugpeak.verbose")) {
            root.setLevel(Level.DEBUG);
            root.addAppender(standardError(context));
        }
        return ExecutionStatus.DO_NOT_INVOKE_NEXT_IF_ANY;
    }

    private static Appender<ILoggingEvent> standardError(LoggerContext context) {
        ConsoleAppender<ILoggingEvent> appender = new ConsoleAppender<>();
        appender.setTarget("System.err");
        return started(appender, context);
    }

    private static Appender<ILoggingEvent> file(LoggerContext context) {
        String path = StateFolder.logFile().toString();
        RollingFileAppender<ILoggingEvent> appender = new RollingFileAppender<>();
        appender.setContext(context);
        appender.setFile(path);
        FixedWindowRollingPolicy rolling = new FixedWindowRollingPolicy();
        rolling.setContext(context);
        rolling.setParent(appender);
        rolling.setFileNamePattern(path + ".%i");
        rolling.setMaxIndex(1);
        rolling.start();
        SizeBasedTriggeringPolicy<ILoggingEvent> trigger = new SizeBasedTriggeringPolicy<>();
        trigger.setContext(context);
        trigger.setMaxFileSize(new FileSize(LARGEST_FILE_BYTES));
        trigger.start();
        appender.setRollingPolicy(rolling);
        appender.setTriggeringPolicy(trigger);
        return started(appender, context);
    }

    private static Appender<ILoggingEvent> started(
            OutputStreamAppender<ILoggingEvent> appender, LoggerContext context) {
        PatternLayoutEncoder encoder = new PatternLayoutEncoder();
        encoder.setContext(context);
        encoder.setPattern(PATTERN);
        encoder.start();
        appender.setContext(context);
        appender.setEncoder(encoder);
        appender.start();
        return appender;
    }
}
