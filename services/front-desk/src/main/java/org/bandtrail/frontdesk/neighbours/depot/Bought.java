package org.bandtrail.frontdesk.neighbours.depot;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/** What supply-stock says about suppliers, orders and deliveries. Quantities are millimetres or pieces. */
public final class Bought {
    private Bought() {}

    /** A supplier. */
    public record Supplier(String supplierId, String name, long openQuotes) {}

    /** A supplier with its quotes, the newest first. */
    public record WholeSupplier(String supplierId, String name, List<Quoted> quotes) {}

    /** A quote; content of one order unit is in micrometres of tape and mesh, or pieces of fasteners. */
    public record Quoted(
            String supplierId,
            int quote,
            String materialCode,
            String kind,
            String unit,
            @Nullable Long contentMicrometres,
            @Nullable Long contentPieces,
            long packUnits,
            long minimumUnits,
            int leadTimeDays,
            LocalDate validFrom,
            @Nullable LocalDate validUntil,
            @Nullable String reference,
            boolean withdrawn,
            boolean holds,
            List<Price> prices) {

        /** What one order unit holds, mm or pieces. */
        public long content() {
            return contentMicrometres == null
                    ? contentPieces == null ? 1 : contentPieces
                    : Math.max(1, contentMicrometres / 1_000);
        }

        /** The least that is sold and covers this quantity of mm or pieces, in order units. */
        public long unitsFor(long quantity) {
            long units = Math.max(minimumUnits, Math.ceilDiv(quantity, content()));
            return Math.ceilDiv(units, packUnits) * packUnits;
        }
    }

    /** What one order unit costs from a quantity on. */
    public record Price(long fromUnits, Money unitPrice) {}

    /** An order. */
    public record Order(
            String purchaseId,
            String supplierId,
            String supplierName,
            String depotId,
            String state,
            LocalDate expectedOn,
            Instant orderedAt,
            String personId,
            @Nullable String reason,
            Money total,
            Money committed) {

        /** Tells whether something is still to come. */
        public boolean open() {
            return state.equals("ordered") || state.equals("partly received");
        }
    }

    /** An order with its lines. */
    public record WholeOrder(Order purchase, List<OrderLine> lines) {}

    /** A line of an order; content in micrometres of tape and mesh, or pieces. */
    public record OrderLine(
            String purchaseId,
            int line,
            String materialCode,
            String kind,
            String unit,
            long content,
            long units,
            long ordered,
            Money unitPrice,
            Money price,
            @Nullable Integer quote,
            @Nullable String siteId,
            @Nullable String grant,
            boolean counted,
            long receivedUnits,
            long received,
            long remaining,
            Money committed) {

        /** The unit of quantities: mm or pieces. */
        public String measure() {
            return reels() ? "mm" : "pieces";
        }

        /** Whether it comes on reels. */
        public boolean reels() {
            return !kind.equals("FASTENER");
        }

        /** What one order unit holds, mm or pieces. */
        public long each() {
            return reels() ? content / 1_000 : content;
        }

        /** Order units still to come where units are counted; 0 where lengths are measured. */
        public long remainingUnits() {
            return counted && remaining > 0 ? units - receivedUnits : 0;
        }
    }

    /** A delivery. */
    public record Delivery(
            String deliveryId,
            String supplierId,
            String supplierName,
            @Nullable String purchaseId,
            String depotId,
            String deliveryNote,
            Instant deliveredAt,
            String personId,
            long reels,
            long batches,
            long setAside,
            long findings) {}

    /** A delivery with everything in it. */
    public record WholeDelivery(Delivery delivery, List<DeliveryLine> lines, List<Finding> findings) {}

    /** Goods of one item in a delivery. */
    public record DeliveryLine(
            int line,
            @Nullable Integer purchaseLine,
            String materialCode,
            String kind,
            long units,
            long quantity,
            Money cost,
            List<Piece> pieces) {

        /** The unit of quantities: mm or pieces. */
        public String measure() {
            return kind.equals("FASTENER") ? "pieces" : "mm";
        }
    }

    /** One reel or batch as it arrived. */
    public record Piece(
            String holding,
            String id,
            long quantity,
            @Nullable Long widthMm,
            @Nullable String lot,
            @Nullable LocalDate expiresOn,
            String condition,
            String state,
            Money cost) {

        /** Tells reels and batches of one name apart. */
        public String key() {
            return holding + "/" + id;
        }
    }

    /** Something that is not as it should be. */
    public record Finding(int line, String id, String what, String expected, String found) {
        /** What it is, in words. */
        public String words() {
            return what.toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        }
    }

    /** Paper that labels are printed on. */
    public record Sheet(String sheet, int labels) {
        /** The sheet in words, for example {@code A4, 3 × 8}. */
        public String words() {
            return sheet.replace("a4-", "A4, ")
                    .replace("letter-", "US Letter, ")
                    .replace("single-", "single label, mm ")
                    .replace("x", " × ");
        }
    }

    /** Identities proposed for what a supplier brings. */
    public record Numbers(List<String> numbers) {}
}
