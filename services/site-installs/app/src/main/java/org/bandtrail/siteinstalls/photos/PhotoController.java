package org.bandtrail.siteinstalls.photos;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Identity;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;

/** Photos over HTTP. */
@RestController
@Tag(name = "photos", description = "Pictures of trees, bands and sites, stored anew as JPEG without metadata")
final class PhotoController {
    private static final Duration KEPT = Duration.ofMinutes(10);
    private final Work work;
    private final Photos photos;
    private final Clock clock;

    PhotoController(Work work, Photos photos, Clock clock) {
        this.work = work;
        this.photos = photos;
        this.clock = clock;
    }

    @PostMapping(path = "/photos", consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    @Operation(
            summary = "Attach a photo",
            description = "Parts: file (JPEG or PNG, at most 8 MB), commandId, of (tree, band or site) and subject, the"
                    + " identity of that thing. The picture is stored upright with its longest side at most 1600"
                    + " pixels, without metadata.")
    Attached attach(
            @RequestParam("file") MultipartFile file,
            @RequestParam UUID commandId,
            @RequestParam String of,
            @RequestParam String subject,
            @Parameter(hidden = true) ActingPerson person)
            throws IOException {
        PhotoOf kind = PhotoOf.spelt(of);
        String subjectId = Identity.checked(kind.word(), subject);
        if (file.getSize() > Picture.MOST_BYTES) {
            throw new PhotoRefused.TooLarge(file.getSize(), Picture.MOST_BYTES);
        }
        byte[] bytes = file.getBytes();
        Sent content = new Sent(kind.word(), subjectId, PhotoId.of(bytes));
        return work.once(
                commandId,
                content,
                Attached.class,
                () -> new Attached(photos.attach(kind, subjectId, bytes, person.id(), clock.instant())));
    }

    @GetMapping(path = "/photos/{photoId}", produces = MediaType.IMAGE_JPEG_VALUE)
    @Operation(summary = "The picture")
    ResponseEntity<byte[]> one(@PathVariable PhotoId photoId) {
        byte[] jpeg = photos.jpeg(photoId).orElseThrow(() -> new NoSuch("photo", photoId));
        // It could be kept for ever, its name is its content; but a picture that is erased must go from screens too.
        return ResponseEntity.ok()
                .cacheControl(CacheControl.maxAge(KEPT).cachePrivate())
                .contentType(MediaType.IMAGE_JPEG)
                .body(jpeg);
    }

    @GetMapping("/photos")
    @Operation(summary = "The photos of one tree, band or site, the latest first")
    Rows list(@RequestParam String of, @RequestParam String subject) {
        return new Rows(photos.of(PhotoOf.spelt(of), subject));
    }

    @PostMapping("/photos/{photoId}/erase")
    @Operation(
            summary = "Erase a picture, for example because it shows a person",
            description = "Only the note stays that there was one, who erased it and why.")
    Attached erase(
            @PathVariable PhotoId photoId,
            @Valid @RequestBody Erase request,
            @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), List.of(photoId.value(), request), Attached.class, () -> {
            if (!photos.erase(photoId, request.why(), person.id(), clock.instant())) {
                throw new NoSuch("photo", photoId);
            }
            return new Attached(photoId);
        });
    }

    record Sent(String of, String subject, PhotoId file) {}

    record Attached(PhotoId photoId) {}

    record Erase(@NotNull UUID commandId, @NotBlank String why) {}

    record Rows(List<PhotoView> rows) {}
}
