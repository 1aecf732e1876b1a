open module org.slugpeak.cli {
    requires ch.qos.logback.classic;
    requires ch.qos.logback.core;
    requires com.fasterxml.jackson.core;
    requires com.h2database;
    requires info.picocli;
    requires io.nayuki.qrcodegen;
    requires java.desktop;
    requires java.sql;
    requires jdk.httpserver;
    requires org.jline.terminal;
    requires org.jline.terminal.jni;
    requires org.jspecify;
    requires org.postgresql.jdbc;
    requires org.slf4j;
    requires org.slugpeak.bridge;
    requires org.slugpeak.core;
    provides ch.qos.logback.classic.spi.Configurator with
            org.slugpeak.cli.program.LogSetup;
}
