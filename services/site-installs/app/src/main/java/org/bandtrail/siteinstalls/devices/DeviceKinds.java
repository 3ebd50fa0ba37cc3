package org.bandtrail.siteinstalls.devices;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.siteinstalls.policies.CutLengths;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** All kinds of devices, as {@code defaults/devices.json} lists them. */
@Component
public class DeviceKinds {
    /** The kind that is meant when nobody names one. */
    public static final String STICKY_BAND = "sticky-band";

    private final Map<String, DeviceKind> kinds = new LinkedHashMap<>();

    /** Reads the kinds; a file that cannot be read keeps the service from starting. */
    public DeviceKinds() {
        try (var file = new ClassPathResource("defaults/devices.json").getInputStream()) {
            JsonMapper.builder()
                    .build()
                    .readValue(file, new TypeReference<List<DeviceKind>>() {})
                    .forEach(kind -> kinds.put(kind.code(), kind));
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The kinds of devices cannot be read.", unreadable);
        }
    }

    /** All, in the order of the file. */
    public List<DeviceKind> all() {
        return List.copyOf(kinds.values());
    }

    /** The kind of a code, empty if nobody described it here. */
    public Optional<DeviceKind> named(String code) {
        return Optional.ofNullable(kinds.get(code));
    }

    /**
     * The kind of a code, or the usual one of the policy if none is named.
     *
     * @throws IllegalArgumentException naming the code if nobody described it here
     */
    public DeviceKind chosen(@Nullable String code, CutLengths policy) {
        if (code == null || code.isBlank()) {
            return usual(policy);
        }
        return named(code)
                .orElseThrow(() -> new IllegalArgumentException("Device [%s] is not described. Choose one of %s."
                        .formatted(code, String.join(", ", kinds.keySet()))));
    }

    /** The kind a policy's guard makes of a sticky band: under mesh, under screen, or alone. */
    public DeviceKind usual(CutLengths policy) {
        String code = switch (policy.setup().guard()) {
            case MESH -> STICKY_BAND;
            case SCREEN -> "screen-band";
            case NONE -> "sticky-band-alone";
        };
        return named(code).orElseThrow(() -> new IllegalStateException("Device %s is not described.".formatted(code)));
    }
}
