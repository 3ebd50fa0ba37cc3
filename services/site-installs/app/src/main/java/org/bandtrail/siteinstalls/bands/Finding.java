package org.bandtrail.siteinstalls.bands;

import org.jspecify.annotations.Nullable;

/**
 * One flag on one band, with the words for people. Before the fact is stored it is a question, afterwards it stands
 * beside the band.
 *
 * @param code of the {@link BandFlag}
 * @param field of the request
 * @param value what was given
 * @param perhaps what was probably meant, null if nothing suggests itself
 * @param message one or two sentences
 */
public record Finding(
        String code, String field, String value, @Nullable String perhaps, String message) {

    static Finding of(BandFlag flag, Object value, String message) {
        return new Finding(flag.code(), flag.field(), value.toString(), null, message);
    }

    static Finding of(BandFlag flag, Object value, @Nullable String perhaps, String message) {
        return new Finding(flag.code(), flag.field(), value.toString(), perhaps, message);
    }
}
