package fayline.app;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Under which names and addresses this machine is found on its network. */
final class NetworkNames {
    private final String own;
    private final List<InetAddress> addresses;

    private NetworkNames(String own, List<InetAddress> addresses) {
        this.own = own;
        this.addresses = List.copyOf(addresses);
    }

    static NetworkNames now() {
        List<InetAddress> found = new ArrayList<>();
        try {
            for (NetworkInterface one : Collections.list(NetworkInterface.getNetworkInterfaces())) {
                if (one.isUp()) {
                    found.addAll(Collections.list(one.getInetAddresses()));
                }
            }
        } catch (SocketException e) {
            // a machine that tells nothing of its network is still reached from itself
            found.add(InetAddress.getLoopbackAddress());
        }
        found.sort(Comparator.comparingInt(NetworkNames::rank).thenComparing(InetAddress::getHostAddress));
        return new NetworkNames(ownName(), found);
    }

    private static String ownName() {
        try {
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException e) {
            return "";
        }
    }

    /** Addresses that phones on the same network most likely reach come first. */
    private static int rank(InetAddress address) {
        if (address.isLoopbackAddress()) {
            return 4;
        }
        if (address instanceof Inet4Address) {
            String text = address.getHostAddress();
            return text.startsWith("192.168.") ? 0 : text.startsWith("10.") ? 1 : 2;
        }
        return 3;
    }

    /** This machine's own name; empty where it has none. */
    String own() {
        return own;
    }

    /** Its names on a local network. */
    List<String> hosts() {
        List<String> all = new ArrayList<>(List.of("localhost"));
        if (!own.isEmpty() && !own.equals("localhost")) {
            all.add(own);
            all.add(own.contains(".") ? own : own + ".local");
        }
        return all.stream().distinct().toList();
    }

    /** Its addresses, the likeliest first. */
    List<InetAddress> addresses() {
        return addresses;
    }

    /**
     * The name or address to tell others: one that the certificate vouches for, an address before a name, since every phone
     * finds an address.
     *
     * @param vouched the names of the certificate
     */
    String home(Collection<String> vouched) {
        return Stream.concat(
                        addresses.stream()
                                .filter(a -> !a.isLoopbackAddress() && a instanceof Inet4Address)
                                .map(InetAddress::getHostAddress),
                        Stream.of(own + ".local", own))
                .filter(vouched::contains)
                .findFirst()
                .orElse("localhost");
    }
}
