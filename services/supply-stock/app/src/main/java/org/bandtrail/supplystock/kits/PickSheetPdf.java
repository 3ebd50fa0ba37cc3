package org.bandtrail.supplystock.kits;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LengthText;

/** The pick sheet on paper, A4 or letter by the units people read. */
final class PickSheetPdf {
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm", Locale.ENGLISH).withZone(ZoneOffset.UTC);

    /** How lengths are written. */
    enum Units {
        /** Metres to the centimetre; millimetres stay in the books. */
        SI,
        /** Feet and inches to the eighth. */
        US
    }

    private final Units units;

    PickSheetPdf(Units units) {
        this.units = units;
    }

    /**
     * The sheet.
     *
     * @param name how the person is called, or empty for the identity
     */
    byte[] of(PickSheet sheet, String name) {
        String person = name.isBlank() ? sheet.kit().personId() : name;
        try (PDDocument document = new PDDocument()) {
            SheetPages pages = new SheetPages(document, units == Units.US);
            pages.heading("Kit " + sheet.kit().kitId() + " for " + person);
            pages.text("Depot %s, crew %s, %d trees. Reserved until %s (UTC)."
                    .formatted(
                            sheet.kit().depotId(),
                            sheet.kit().crewId(),
                            sheet.walk().size(),
                            sheet.kit().until() == null
                                    ? "handed out"
                                    : DAY.format(sheet.kit().until())));
            pages.heading("Collect");
            pages.table(
                    new float[] {1.2f, 2f, 2f, 1.5f, 1.5f, 1.5f},
                    List.of("Bin", "Reel or batch", "Material", "there", "to use", "left over"),
                    collect(sheet));
            pages.heading("Cut, in the order of the walk");
            pages.text("Cut mesh edges are sharp: wear gloves, and eye protection when cutting.");
            pages.table(
                    new float[] {1.8f, 1.3f, 1.7f, 2f, 1.7f, 2f, 1.1f},
                    List.of("Tree", "girth", "tape", "from reel", "mesh", "from reel", "fasteners"),
                    walk(sheet));
            pages.signature("Taken by " + person + " (signs with their own sign-in)", signed(sheet));
            pages.close();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private List<List<String>> collect(PickSheet sheet) {
        List<List<String>> rows = new ArrayList<>();
        for (KitLife.Picked pick : sheet.collect()) {
            boolean reel = pick.kind().onReels();
            rows.add(List.of(
                    pick.bin() == null ? "loose" : pick.bin(),
                    pick.id(),
                    pick.materialCode(),
                    amount(pick.there(), reel),
                    amount(pick.quantity(), reel),
                    amount(pick.there() - pick.quantity(), reel)));
        }
        return rows;
    }

    private List<List<String>> walk(PickSheet sheet) {
        List<List<String>> rows = new ArrayList<>();
        for (PickSheet.Stop stop : sheet.walk()) {
            rows.add(List.of(
                    stop.treeId(),
                    stop.girthMm() == null ? "" : amount(stop.girthMm(), true),
                    cut(stop.bands(), stop.tapeMm()),
                    stop.tapeReel() == null ? "" : stop.tapeReel(),
                    cut(stop.bands(), stop.meshMm()),
                    stop.meshReel() == null ? "" : stop.meshReel(),
                    stop.fasteners() == 0 ? "" : Long.toString(stop.fasteners())));
        }
        return rows;
    }

    private String cut(int bands, long mm) {
        return mm == 0 ? "" : (bands == 1 ? "" : bands + " x ") + amount(mm, true);
    }

    /** A length to the centimetre, rounded up so that no piece is cut short, or pieces. */
    private String amount(long quantity, boolean length) {
        if (!length) {
            return Long.toString(quantity);
        }
        if (units == Units.US) {
            return LengthText.feetAndInches(Length.ofMm(quantity));
        }
        long centimetres = Math.ceilDiv(quantity, 10);
        return String.format(Locale.ROOT, "%d.%02d m", centimetres / 100, centimetres % 100);
    }

    private static String signed(PickSheet sheet) {
        return sheet.kit().signedAt() == null
                ? "not signed yet"
                : "signed " + DAY.format(sheet.kit().signedAt()) + " (UTC)";
    }
}
