package org.bandtrail.siteinstalls.exports;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import org.bandtrail.siteinstalls.trees.TreeChoice;
import org.bandtrail.siteinstalls.trees.Trees;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The register as a file, written while it is read. */
@RestController
@Tag(name = "tree-exports", description = "The register of trees for other programs")
final class TreeExportController {
    private final Trees trees;

    TreeExportController(Trees trees) {
        this.trees = trees;
    }

    @GetMapping({"/trees.csv", "/trees.geojson", "/trees.xlsx"})
    @Operation(
            summary = "Trees as CSV with open field names, as GeoJSON (RFC 7946) or as a spreadsheet",
            description = "Standing trees unless only says otherwise; site and q as in the list of trees.")
    void export(
            HttpServletRequest request,
            HttpServletResponse response,
            @RequestParam(defaultValue = "STANDING") TreeChoice only,
            @RequestParam(required = false) @Nullable String site,
            @RequestParam(required = false) @Nullable String q)
            throws IOException {
        String path = request.getRequestURI();
        String name = path.substring(path.lastIndexOf('/') + 1);
        TreeFormat format =
                TreeFormat.valueOf(name.substring(name.indexOf('.') + 1).toUpperCase(Locale.ROOT));
        response.setContentType(format.mediaType());
        response.setHeader(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"%s\"".formatted(name));
        format.write(new RegisterPages(trees, only, site, q), response.getOutputStream());
    }
}
