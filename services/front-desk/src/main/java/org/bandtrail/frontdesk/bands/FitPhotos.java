package org.bandtrail.frontdesk.bands;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.bandtrail.frontdesk.neighbours.field.BandCare;
import org.bandtrail.frontdesk.neighbours.field.TreeCare;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import org.springframework.web.multipart.MultipartFile;

/** Keeps the picture a crew took while it fitted a band. */
final class FitPhotos {
    private final TreeCare care;

    FitPhotos(TreeCare care) {
        this.care = care;
    }

    /** Attaches the picture to the band of the form and writes its identity into the form's field photos. */
    void keep(@Nullable MultipartFile photo, MultiValueMap<String, String> sent) {
        String command = sent.getFirst("photoCommandId");
        String band = sent.getFirst("bandId");
        if (photo == null || photo.isEmpty() || command == null || band == null) {
            return;
        }
        MultiValueMap<String, Object> parts = new LinkedMultiValueMap<>();
        parts.add("file", new ByteArrayResource(bytes(photo)) {
            @Override
            public String getFilename() {
                return "photo";
            }
        });
        parts.add("commandId", command);
        parts.add("of", "band");
        parts.add("subject", band);
        sent.add(
                "photos",
                care.tell().upload("/photos", parts, BandCare.Attached.class).photoId());
    }

    private static byte[] bytes(MultipartFile photo) {
        try {
            return photo.getBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The photo did not arrive whole.", unreadable);
        }
    }
}
