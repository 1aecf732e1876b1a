package org.slugpeak.bridge.instrument;

import java.util.ServiceLoader;
import org.slugpeak.bridge.source.PortUnavailable;

/** The kinds of line that are on the class path. Stateless; any thread may use it. */
public final class Carriers {

    private Carriers() {}

    /**
     * The first that claims the address, in the order of the registration.
     *
     * @param address as the user gave it
     * @return opens it
     * @throws PortUnavailable where the installation is damaged
     */
    public static CarrierProvider of(String address) throws PortUnavailable {
        for (CarrierProvider each : ServiceLoader.load(CarrierProvider.class, Carriers.class.getClassLoader())) {
            if (each.claims(address)) {
                return each;
            }
        }
        throw new PortUnavailable(
                "nothing can open " + address + ": this installation is damaged; install slugpeak anew");
    }
}
