package org.bandtrail.siteinstalls.imports;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.io.IOException;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Work;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Imports of tree inventories over HTTP. */
@RestController
@Tag(name = "tree-imports", description = "Tree inventories from CSV: look first, then store exactly what was shown")
final class ImportController {
    private static final int SAMPLE = 20;
    private final TreeImports imports;
    private final KeptPreviews kept;
    private final Work work;
    private final JsonMapper json;

    ImportController(TreeImports imports, KeptPreviews kept, Work work, JsonMapper json) {
        this.imports = imports;
        this.kept = kept;
        this.work = work;
        this.json = json;
    }

    @PostMapping(path = "/tree-imports/preview", consumes = MediaType.MULTIPART_FORM_DATA_VALUE)
    @Operation(
            summary = "Look through an inventory file",
            description = "Parts: file (CSV; UTF-8, UTF-16 or Windows-1252; comma, semicolon or tab) and mapping (JSON:"
                    + " siteColumn or siteId, tagColumn, speciesColumn, girthColumn or dbhColumn, unit, dateColumn,"
                    + " aliveColumn with aliveValue, where such as Status_2026=LI). Lists every problem by row and"
                    + " column, row 1 is the header; nothing goes into the register.")
    Shown preview(
            @RequestParam("file") MultipartFile file,
            @RequestParam("mapping") String mapping,
            @Parameter(hidden = true) ActingPerson person)
            throws IOException {
        byte[] bytes = file.getBytes();
        Mapping read = read(mapping).mapping();
        return Shown.of(TreeImports.importId(bytes, read), imports.preview(bytes, read, person.id()));
    }

    @PostMapping("/tree-imports/{importId}/store")
    @Operation(
            summary = "Store what a preview showed as ready",
            description = "Refused when one of the trees was registered since. Rows with problems must be left out on"
                    + " purpose, by onlyReady. Up to 5,000 trees are stored at once; more go in by pages after the"
                    + " answer, also over a restart: look at the import for how far it is.")
    Stored store(
            @PathVariable String importId,
            @Valid @RequestBody Store request,
            @Parameter(hidden = true) ActingPerson person) {
        return work.once(
                request.commandId(),
                List.of(importId, request),
                Stored.class,
                () -> Stored.of(imports.store(importId, request.onlyReady(), person.id())));
    }

    @GetMapping("/tree-imports/{importId}")
    @Operation(summary = "How far an import is: trees written so far while storing, trees stored afterwards")
    KeptPreview one(@PathVariable String importId) {
        return kept.one(importId).orElseThrow(() -> new ImportRefused.Unknown(importId));
    }

    private MappingRequest read(String mapping) {
        try {
            return json.readValue(mapping, MappingRequest.class);
        } catch (JacksonException misfit) {
            throw new IllegalArgumentException(
                    "The mapping cannot be read: %s".formatted(misfit.getOriginalMessage()), misfit);
        }
    }

    record Store(@NotNull UUID commandId, boolean onlyReady) {}

    /** Trees stored so far, of how many, and whether that is all. */
    record Stored(int stored, int total, boolean finished) {
        static Stored of(KeptPreview preview) {
            KeptPreview.Progress progress = preview.progress();
            return new Stored(progress == null ? 0 : progress.done(), preview.ready(), preview.stored() != null);
        }
    }

    /** One ready row of the sample. */
    record Row(int row, String treeId, String siteId, String tag, String species, long girthMm) {}

    record Shown(
            String importId,
            List<String> columns,
            int rowCount,
            int selected,
            int ready,
            List<ImportProblem> problems,
            List<ImportQuestion> questions,
            List<String> notes,
            List<Row> sample) {
        static Shown of(String importId, Preview preview) {
            return new Shown(
                    importId,
                    preview.columns(),
                    preview.rowCount(),
                    preview.selected(),
                    preview.ready().size(),
                    preview.problems(),
                    preview.questions(),
                    preview.notes(),
                    preview.ready().stream()
                            .limit(SAMPLE)
                            .map(tree -> new Row(
                                    tree.row(),
                                    tree.treeId().value(),
                                    tree.siteId().value(),
                                    tree.tag(),
                                    tree.species(),
                                    tree.girth().girth().mm()))
                            .toList());
        }
    }
}
