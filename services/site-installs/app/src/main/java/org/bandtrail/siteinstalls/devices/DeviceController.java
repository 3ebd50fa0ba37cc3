package org.bandtrail.siteinstalls.devices;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.kernel.Length;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.policies.CutPolicies;
import org.bandtrail.siteinstalls.policies.CutPolicyVersion;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Kinds of devices over HTTP. */
@RestController
@Tag(name = "devices", description = "What can hang on a trunk, and what it is made of")
final class DeviceController {
    private final DeviceKinds kinds;
    private final CutPolicies policies;
    private final Clock clock;

    DeviceController(DeviceKinds kinds, CutPolicies policies, Clock clock) {
        this.kinds = kinds;
        this.policies = policies;
        this.clock = clock;
    }

    @GetMapping("/devices")
    @Operation(summary = "All kinds of devices")
    Rows all() {
        return new Rows(kinds.all().stream().map(Kind::of).toList(), null);
    }

    @GetMapping("/devices/{code}/pieces")
    @Operation(
            summary = "The pieces of one device for a girth, with the calculation",
            description = "girth is text with its unit. measure=imperial rounds up to 1/8 in instead of 5 mm; on,"
                    + " programme and pest choose the policy.")
    Needed pieces(
            @PathVariable String code,
            @RequestParam String girth,
            @RequestParam(defaultValue = "metric") String measure,
            @RequestParam(required = false) @Nullable LocalDate on,
            @RequestParam(required = false) @Nullable String programme,
            @RequestParam(required = false) @Nullable String pest) {
        DeviceKind kind = kinds.named(code).orElseThrow(() -> new NoSuch("device", code));
        LocalDate day = on == null ? LocalDate.ofInstant(clock.instant(), clock.getZone()) : on;
        CutPolicyVersion policy = policies.on(day, programme, pest);
        Length round = WrittenGirth.ofGirth(girth).girth();
        PieceList list = PieceList.of(kind, round, policy.values(), TapeMeasure.named(measure));
        return new Needed(
                code,
                round.mm(),
                policy.version(),
                list.pieces().stream().map(Cut::of).toList());
    }

    /** A kind, flat. */
    record Kind(
            String code,
            String name,
            String what,
            boolean needsGuard,
            @Nullable String question,
            String source,
            List<String> cautions,
            List<Part> parts) {
        static Kind of(DeviceKind kind) {
            return new Kind(
                    kind.code(),
                    kind.name(),
                    kind.what(),
                    kind.needsGuard(),
                    kind.question(),
                    kind.source(),
                    kind.cautions(),
                    kind.parts().stream().map(Part::of).toList());
        }
    }

    /** A part of a kind, flat. */
    record Part(String name, String role, String material, boolean reusable, String source) {
        static Part of(DevicePart part) {
            return new Part(part.name(), word(part.role()), word(part.material()), part.reusable(), part.source());
        }

        private static String word(Enum<?> value) {
            return value.name().toLowerCase(Locale.ROOT);
        }
    }

    /** A needed piece; lengthMm or pieces is null. */
    record Cut(Part part, @Nullable Long lengthMm, @Nullable Long pieces, String formula) {
        static Cut of(NeededPiece piece) {
            return new Cut(
                    Part.of(piece.part()),
                    piece.length() == null ? null : (Long) piece.length().mm(),
                    piece.pieces() == null ? null : (Long) piece.pieces().count(),
                    piece.formula());
        }
    }

    /** The pieces of one device. */
    record Needed(String device, long girthMm, int policyVersion, List<Cut> pieces) {}

    record Rows(List<Kind> rows, @Nullable String next) {}
}
