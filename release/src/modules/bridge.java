open module org.slugpeak.bridge {
    requires com.fasterxml.jackson.core;
    requires com.fazecast.jSerialComm;
    requires com.sun.jna;
    requires java.desktop;
    requires jdk.security.auth;
    requires org.apache.commons.csv;
    requires org.jspecify;
    requires org.slf4j;
    requires org.slugpeak.core;
    requires org.tomlj;
    uses org.slugpeak.bridge.instrument.CarrierProvider;
    uses org.slugpeak.bridge.instrument.DecoderProvider;
    provides org.slugpeak.bridge.instrument.CarrierProvider with
            org.slugpeak.bridge.tcp.TcpProvider,
            org.slugpeak.bridge.usbtmc.UsbTmcProvider,
            org.slugpeak.bridge.serial.SerialProvider;
    provides org.slugpeak.bridge.instrument.DecoderProvider with
            org.slugpeak.bridge.frame.FrameLanguage,
            org.slugpeak.bridge.line.LineLanguage,
            org.slugpeak.bridge.scpi.ScpiLanguage;
}
