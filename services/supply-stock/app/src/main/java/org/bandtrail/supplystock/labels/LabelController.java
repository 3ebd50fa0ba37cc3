package org.bandtrail.supplystock.labels;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bandtrail.supplystock.deliveries.DeliveryId;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;

/** Labels over HTTP, as PDF. */
@RestController
@Tag(name = "labels", description = "Printed labels of reels and batches with a QR code")
final class LabelController {
    private final Labels labels;

    LabelController(Labels labels) {
        this.labels = labels;
    }

    @GetMapping("/labels/sheets")
    @Operation(summary = "The sheets labels can be printed on")
    Sheets sheets() {
        return new Sheets(
                Arrays.stream(LabelSheet.values())
                        .map(sheet -> new Sheet(sheet.word(), sheet.perPage()))
                        .toList(),
                null);
    }

    @GetMapping("/labels.pdf")
    @Operation(summary = "Labels of a whole delivery, or of named reels and batches, on a sheet begun at any label")
    ResponseEntity<byte[]> print(
            @RequestParam(required = false) @Nullable DeliveryId delivery,
            @RequestParam(required = false) @Nullable List<String> reel,
            @RequestParam(required = false) @Nullable List<String> batch,
            @RequestParam(defaultValue = "a4-3x8") String sheet,
            @RequestParam(defaultValue = "1") int start) {
        List<LabelText> texts = new ArrayList<>();
        if (delivery != null) {
            texts.addAll(labels.of(delivery));
        }
        for (String id : reel == null ? List.<String>of() : reel) {
            texts.add(known("reel", id));
        }
        for (String id : batch == null ? List.<String>of() : batch) {
            texts.add(known("batch", id));
        }
        if (texts.isEmpty()) {
            throw new ResponseStatusException(
                    HttpStatus.NOT_FOUND, "There is nothing to label. Name a recorded delivery, a reel or a batch.");
        }
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename("labels.pdf")
                                .build()
                                .toString())
                .body(new LabelPdf(LabelSheet.of(sheet)).of(texts, start));
    }

    private LabelText known(String holding, String id) {
        return labels.of(holding, id)
                .orElseThrow(() -> new ResponseStatusException(
                        HttpStatus.NOT_FOUND, "%s [%s] is not in the books. Receive it first.".formatted(holding, id)));
    }

    record Sheet(String sheet, int labels) {}

    record Sheets(List<Sheet> rows, @Nullable String next) {}
}
