package fayline.store.file.trust;

import java.net.InetAddress;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bouncycastle.asn1.ASN1OctetString;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.NameConstraints;

/**
 * What the shop's authority may vouch for: private addresses ([rfc1918], [rfc4193], link-local, loopback), the names that
 * never leave a local network ({@code localhost}, {@code .local} [rfc6762], {@code .home.arpa} [rfc8375], {@code .internal},
 * {@code .lan}) and this machine's own name.
 */
final class LocalNames {
    private static final List<String> DOMAINS = List.of("localhost", "local", "home.arpa", "internal", "lan");
    private static final List<String> NETS = List.of(
            "10.0.0.0/8",
            "172.16.0.0/12",
            "192.168.0.0/16",
            "169.254.0.0/16",
            "127.0.0.0/8",
            "fc00::/7",
            "fe80::/10",
            "::1/128");

    private LocalNames() {}

    static NameConstraints constraints(String ownName) {
        List<GeneralSubtree> permitted = new ArrayList<>();
        for (String domain : DOMAINS) {
            permitted.add(new GeneralSubtree(new GeneralName(GeneralName.dNSName, domain)));
        }
        if (isHostName(ownName)) {
            permitted.add(new GeneralSubtree(new GeneralName(GeneralName.dNSName, ownName.toLowerCase(Locale.ROOT))));
        }
        for (String net : NETS) {
            permitted.add(new GeneralSubtree(new GeneralName(GeneralName.iPAddress, net)));
        }
        return new NameConstraints(permitted.toArray(GeneralSubtree[]::new), null);
    }

    private static boolean isHostName(String name) {
        return name.matches("[A-Za-z0-9]([A-Za-z0-9.-]{0,250}[A-Za-z0-9])?");
    }

    /** Whether the authority's certificate lets it vouch for a host. */
    static boolean mayVouch(X509Certificate authority, String host) {
        if (!isHostName(host)) {
            return false;
        }
        byte[] kept = authority.getExtensionValue(Extension.nameConstraints.getId());
        if (kept == null) {
            return false;
        }
        NameConstraints constraints =
                NameConstraints.getInstance(ASN1OctetString.getInstance(kept).getOctets());
        for (GeneralSubtree tree : constraints.getPermittedSubtrees()) {
            GeneralName base = tree.getBase();
            if (base.getTagNo() == GeneralName.dNSName) {
                String domain = base.getName().toString();
                if (host.equals(domain) || host.endsWith("." + domain)) {
                    return true;
                }
            }
        }
        return false;
    }

    static boolean isPrivate(InetAddress address) {
        byte[] b = address.getAddress();
        boolean uniqueLocal = b.length == 16 && (b[0] & 0xfe) == 0xfc;
        boolean siteLocal = b.length == 4 && address.isSiteLocalAddress();
        return uniqueLocal || siteLocal || address.isLinkLocalAddress() || address.isLoopbackAddress();
    }

    /** An address as text, without the name of the interface that Java adds. */
    static String text(InetAddress address) {
        String text = address.getHostAddress();
        int scope = text.indexOf('%');
        return scope < 0 ? text : text.substring(0, scope);
    }
}
