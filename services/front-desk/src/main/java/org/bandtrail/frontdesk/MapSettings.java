package org.bandtrail.frontdesk;

import java.net.URI;
import java.net.URISyntaxException;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;

/**
 * A picture behind the map, off unless an address is set. Whoever sets it lets that host see which part of the map each
 * reader looks at, so it is for the house to decide.
 *
 * @param tiles address with {@code {z}}, {@code {x}} and {@code {y}}, null for none
 * @param attribution words the host asks to stand below the map, null for none
 */
@ConfigurationProperties("bandtrail.map")
public record MapSettings(@Nullable String tiles, @Nullable String attribution) {

    /**
     * Refuses an address that cannot work.
     *
     * @throws IllegalArgumentException naming the address
     */
    public MapSettings {
        if (tiles != null && !tiles.isBlank()) {
            if (!tiles.contains("{z}") || !tiles.contains("{x}") || !tiles.contains("{y}")) {
                throw new IllegalArgumentException(
                        "bandtrail.map.tiles [%s] must hold {z}, {x} and {y}.".formatted(tiles));
            }
            origin(tiles);
        }
    }

    /** Whether a picture is drawn behind the map. */
    public boolean on() {
        return tiles != null && !tiles.isBlank();
    }

    /** The host pages may load pictures from, with a blank in front; empty if none is set. */
    public String pictureSource() {
        return tiles == null || tiles.isBlank() ? "" : " " + origin(tiles);
    }

    /** The address of one tile. */
    public String tile(int zoom, int x, int y) {
        if (tiles == null) {
            throw new IllegalStateException("There is no address for tiles. Ask on() first.");
        }
        return tiles.replace("{z}", Integer.toString(zoom))
                .replace("{x}", Integer.toString(x))
                .replace("{y}", Integer.toString(y));
    }

    private static String origin(String address) {
        try {
            URI uri = new URI(address.replaceAll("[{}]", ""));
            if (uri.getHost() == null || !("https".equals(uri.getScheme()) || "http".equals(uri.getScheme()))) {
                throw new IllegalArgumentException(
                        "bandtrail.map.tiles [%s] must begin with https:// and a host.".formatted(address));
            }
            return uri.getScheme() + "://" + uri.getAuthority();
        } catch (URISyntaxException unreadable) {
            throw new IllegalArgumentException(
                    "bandtrail.map.tiles [%s] is not an address.".formatted(address), unreadable);
        }
    }
}
