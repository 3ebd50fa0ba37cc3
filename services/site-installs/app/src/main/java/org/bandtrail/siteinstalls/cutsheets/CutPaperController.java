package org.bandtrail.siteinstalls.cutsheets;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.siteinstalls.cutplans.CutPlanId;
import org.bandtrail.siteinstalls.cutplans.CutPlanView;
import org.bandtrail.siteinstalls.cutplans.CutPlans;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Cut plans on paper, over HTTP. */
@RestController
@Tag(name = "cut sheets", description = "A cut plan as PDF: the sheet to cut by, and labels for the pieces")
final class CutPaperController {
    private final CutPlans plans;

    CutPaperController(CutPlans plans) {
        this.plans = plans;
    }

    @GetMapping(path = "/cut-plans/{planId}/sheet.pdf", produces = MediaType.APPLICATION_PDF_VALUE)
    @Operation(summary = "The sheet to cut by", description = "units si (mm, A4) or us (feet and inches, letter)")
    byte[] sheet(@PathVariable CutPlanId planId, @RequestParam(defaultValue = "si") String units) {
        return new CutSheetPdf(SheetUnits.of(units)).of(plan(planId));
    }

    @GetMapping(path = "/cut-plans/{planId}/labels.pdf", produces = MediaType.APPLICATION_PDF_VALUE)
    @Operation(
            summary = "A label for each band, in the order of the walk",
            description = "start is the first free label of the sheet, counted row by row from 1")
    byte[] labels(
            @PathVariable CutPlanId planId,
            @RequestParam(defaultValue = "si") String units,
            @RequestParam(defaultValue = "1") int start) {
        return new TreeLabelsPdf(SheetUnits.of(units)).of(plan(planId), start);
    }

    private CutPlanView.Whole plan(CutPlanId planId) {
        return plans.whole(planId).orElseThrow(() -> new NoSuch("cut plan", planId));
    }
}
