package org.bandtrail.siteinstalls.imports;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Work;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;

/** Uploaded files over HTTP: what their columns are and probably mean, and the preview by a mapping. */
@RestController
@Tag(name = "tree-imports", description = "Tree inventories: look first, then store exactly what was shown")
final class ImportFileController {
    private static final int SAMPLE = 5;
    private final ImportFiles files;
    private final TreeImports imports;
    private final Work work;
    private final Clock clock;

    ImportFileController(ImportFiles files, TreeImports imports, Work work, Clock clock) {
        this.files = files;
        this.imports = imports;
        this.work = work;
        this.clock = clock;
    }

    @PostMapping(path = "/tree-imports/files", consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    @Operation(
            summary = "Keep a file for a day and propose what its columns mean",
            description = "CSV, GeoJSON (RFC 7946) or XLSX, known by its content. The proposal has the names of the"
                    + " mapping's fields; a unit is proposed only where a column's name carries it.")
    Opened open(@RequestParam("file") MultipartFile file, @Parameter(hidden = true) ActingPerson person)
            throws IOException {
        byte[] bytes = file.getBytes();
        InventoryFile opened = InventoryFile.open(bytes);
        List<List<String>> sample = new ArrayList<>();
        while (sample.size() < SAMPLE && opened.more()) {
            sample.add(opened.next().fields());
        }
        String fileId = fileId(bytes);
        return work.inOneTransaction(() -> {
            files.keep(fileId, bytes, person.id(), clock.instant());
            return new Opened(fileId, opened.columns(), opened.notes(), FieldNames.propose(opened.columns()), sample);
        });
    }

    @PostMapping("/tree-imports/files/{fileId}/preview")
    @Operation(summary = "Look through a kept file by a mapping; nothing goes into the register")
    ImportController.Shown preview(
            @PathVariable String fileId,
            @Valid @RequestBody MappingRequest mapping,
            @Parameter(hidden = true) ActingPerson person) {
        byte[] bytes = files.content(fileId);
        Mapping read = mapping.mapping();
        return ImportController.Shown.of(TreeImports.importId(bytes, read), imports.preview(bytes, read, person.id()));
    }

    private static String fileId(byte[] bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return "FILE-" + HexFormat.of().formatHex(digest, 0, 8).toUpperCase(Locale.ROOT);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256", impossible);
        }
    }

    /** A kept file: its columns, what they probably mean, and its first rows. */
    record Opened(
            String fileId,
            List<String> columns,
            List<String> notes,
            Map<String, String> proposal,
            List<List<String>> sample) {}
}
