package org.bandtrail.supplystock.traces;

import java.time.Instant;
import java.util.List;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LoadId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.OverHttp;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;

/**
 * The story of a lot, told through the front door where there is one: four reels of tape ordered and delivered, the first
 * handed out, fitted and partly disposed, the second slit into two strips, the third and fourth on the shelf.
 *
 * @param mark begins every identity, so that stories do not meet
 */
public record DeliveredLot(OverHttp http, Work work, Commands commands, String mark, String lot) {
    private static final Occurred WHEN = Occurred.at(Instant.parse("2026-05-12T10:00:00Z"));
    private static final PersonId KEEPER = new PersonId("P-01");

    /** Orders and receives the lot into bin A-01; reels {@code mark-R1} to {@code mark-R4}, each of 50 m. */
    public DeliveredLot deliver() {
        http.ok("/items", """
                {"materialCode": "%1$s-TAPE", "kind": "TAPE", "name": "Tape", "width": "127 mm", "reelLength": "50 m",
                 "unitCost": {"minor": 3900, "currency": "USD"}}""".formatted(mark));
        http.ok("/suppliers", "{\"supplierId\": \"%s-SUP\", \"name\": \"Holm and daughters\"}".formatted(mark));
        http.ok("/suppliers/%s-SUP/quotes".formatted(mark), """
                {"materialCode": "%1$s-TAPE", "unitCode": "C62", "packageCode": "RL", "content": "50 m",
                 "packUnits": 1, "minimumUnits": 1, "leadTimeDays": 9, "validFrom": "2026-01-01",
                 "prices": [{"fromUnits": 1, "unitPrice": {"minor": 3600, "currency": "USD"}}]}""".formatted(mark));
        http.ok("/purchases", """
                {"purchaseId": "%1$s-PO", "supplierId": "%1$s-SUP", "depotId": "%1$s-YARD",
                 "lines": [{"quote": 1, "units": 4}], "happenedAt": "2026-05-04T08:00:00Z"}""".formatted(mark));
        http.ok("/deliveries", """
                {"deliveryId": "%1$s-D1", "purchaseId": "%1$s-PO", "depotId": "%1$s-YARD", "bin": "A-01", "accept": true,
                 "lines": [{"purchaseLine": 1, "reels": [%2$s, %3$s, %4$s, %5$s]}],
                 "happenedAt": "2026-05-12T09:00:00Z"}""".formatted(mark, reel(1), reel(2), reel(3), reel(4)));
        return this;
    }

    private String reel(int number) {
        return """
                {"reelId": "%s-R%d", "length": "50 m", "width": "127 mm", "lot": "%s", "expiresOn": "2028-03-31"}""".formatted(mark, number, lot.toLowerCase(java.util.Locale.ROOT));
    }

    /** Hands a reel out to {@code mark-P}. */
    public DeliveredLot handOut(String reel) {
        http.ok("/handouts", """
                {"kitId": "%1$s-K-%2$s", "depotId": "%1$s-YARD", "crewId": "%1$s-C", "personId": "%1$s-P",
                 "reels": ["%1$s-%2$s"], "happenedAt": "2026-05-12T11:00:00Z"}""".formatted(mark, reel));
        return this;
    }

    /** Fits a length to {@code mark-T1} and another to {@code mark-T2}; takes the second down, bags and disposes it. */
    public DeliveredLot useOnTrees(String reel) {
        Place crew = Place.crew(new PersonId(mark + "-P"));
        Place first = Place.tree(new TreeId(mark + "-T1"));
        Place second = Place.tree(new TreeId(mark + "-T2"));
        Place bag = Place.bag(new BagId(mark + "-BAG"));
        fact(reel, crew, first, 1_100);
        fact(reel, crew, second, 900);
        fact(reel, second, bag, 900);
        fact(reel, bag, Place.disposed(new LoadId(mark + "-LOAD")), 400);
        return this;
    }

    private void fact(String reel, Place from, Place to, long mm) {
        send(new ReelCommand.RecordFact(
                new ReelId(mark + "-" + reel),
                "band " + mark,
                from,
                to,
                Length.ofMm(mm),
                new SiteId(mark + "-SITE"),
                KEEPER,
                WHEN));
    }

    /** Slits 30 m of a reel in bin A-01 into two strips, {@code reel + "A"} and {@code reel + "B"}. */
    public DeliveredLot slit(String reel) {
        DepotId depot = new DepotId(mark + "-YARD");
        String slitting = mark + "-S-" + reel;
        send(
                new ReelCommand.Slit(
                        new ReelId(mark + "-" + reel),
                        slitting,
                        Place.bin(depot, "A-01"),
                        Length.ofMm(30_000),
                        KEEPER,
                        WHEN),
                strip(reel + "A", slitting, depot),
                strip(reel + "B", slitting, depot));
        return this;
    }

    private ReelCommand strip(String reel, String slitting, DepotId depot) {
        return new ReelCommand.MakeBySlitting(
                new ReelId(mark + "-" + reel),
                new MaterialCode(mark + "-TAPE"),
                MaterialKind.TAPE,
                Length.ofMm(30_000),
                Money.of(1_080, "USD"),
                slitting,
                Place.depot(depot),
                KEEPER,
                WHEN);
    }

    private void send(ReelCommand... all) {
        work.inOneTransaction(() -> {
            List.of(all).forEach(commands::send);
            return all;
        });
    }
}
