package org.bandtrail.supplystock.simulation;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LoadId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;
import tools.jackson.databind.JsonNode;

/** Plays steps through the front door, and the field's facts as the feeds bring them. Wishes may be refused. */
final class StockPlay {
    private static final Instant MAY = Instant.parse("2026-05-01T08:00:00Z");
    private static final PersonId WHO = new PersonId("P-SIM");
    private final FrontDoor door;
    private final Work work;
    private final Commands commands;
    private final String prefix;
    private final List<String> transfers = new ArrayList<>();
    private int made;

    StockPlay(FrontDoor door, Work work, Commands commands, String prefix) {
        this.door = door;
        this.work = work;
        this.commands = commands;
        this.prefix = prefix;
    }

    void play(StockStep step) {
        String reel = reel(step);
        switch (step.kind()) {
            case RECEIVE, DELIVER, ACCEPT, SLIT, SEND_BACK -> buy(step, reel);
            case PUT_IN_BIN, SET_ASIDE, RELEASE, SEND, ARRIVE, CALL_OFF -> move(step, reel);
            case HAND_OUT, FIT, TAKE_DOWN, DISPOSE, RETURN -> use(step, reel);
            case SETTLE, ADJUST, CHANGE_COST, FREIGHT, WRITE_DOWN, CLOSE_MONTH -> correct(step, reel);
        }
    }

    /** A reel received, or a strip of the first wide one. */
    private String reel(StockStep step) {
        return prefix + (step.yes() && step.reel() == 2 ? "R0-A" : "R" + step.reel());
    }

    private static String item(StockStep step) {
        return step.reel() < 2 ? "SIM-W" : "SIM-N";
    }

    private void buy(StockStep step, String reel) {
        switch (step.kind()) {
            case RECEIVE ->
                door.wish("/reels", """
                        {"reelId":"%s","materialCode":"%s","depotId":"SIM-D","length":"%d mm","cost":{"minor":%d,"currency":"USD"},
                         "happenedAt":"%s"}""", reel, item(step), 5_000 + step.amount(), step.amount(), when(step));
            case DELIVER ->
                door.wish(
                        "/deliveries",
                        """
                        {"deliveryId":"%s","supplierId":"SIM-S","depotId":"SIM-D","accept":%s,"happenedAt":"%s","lines":[
                         {"materialCode":"%s","cost":{"minor":%d,"currency":"USD"},"batches":[],
                          "reels":[{"reelId":"%s","length":"%d mm","lot":"%sL"}]}]}""",
                        prefix + "DEL" + step.reel(),
                        step.yes(),
                        when(step),
                        item(step),
                        step.amount(),
                        reel,
                        5_000 + step.amount(),
                        prefix);
            case ACCEPT -> door.wish("/deliveries/%sDEL%d/accept".formatted(prefix, step.reel()), """
                        {"keys":["reel/%s"],"bin":"A"}""", reel);
            case SEND_BACK -> door.wish("/deliveries/%sDEL%d/send-back".formatted(prefix, step.reel()), """
                        {"keys":["reel/%s"],"reason":"torn"}""", reel);
            default ->
                door.wish("/slittings", """
                        {"slittingId":"%s","reelId":"%s","depotId":"SIM-D","length":"%d mm","trim":"0 mm","happenedAt":"%s","strips":[
                         {"reelId":"%s-A","materialCode":"SIM-N"},{"reelId":"%s-B","materialCode":"SIM-N"},
                         {"reelId":"%s-C","materialCode":"SIM-N"}]}""", prefix + "SL" + made++, reel, step.amount(), when(step), reel, reel, reel);
        }
    }

    private void move(StockStep step, String reel) {
        String one = step.other() == 0 ? "SIM-D" : "SIM-E";
        switch (step.kind()) {
            case PUT_IN_BIN -> door.wish("/bins/put", """
                        {"depotId":"%s","mark":"A","reelId":"%s","happenedAt":"%s"}""", one, reel, when(step));
            case SET_ASIDE -> door.wish("/set-aside", """
                        {"depotId":"%s","reelId":"%s","reason":"looks dry"}""", one, reel);
            case RELEASE -> door.wish("/set-aside/release", """
                        {"depotId":"%s","reelId":"%s","reason":"holds"}""", one, reel);
            case SEND -> {
                String transfer = prefix + "TR" + made++;
                transfers.add(transfer);
                door.wish("/transfers", """
                        {"transferId":"%s","from":"depot:SIM-D","to":"depot:SIM-E","carrier":"P-CAR","reels":["%s"],
                         "happenedAt":"%s"}""", transfer, reel, when(step));
            }
            case ARRIVE ->
                transfers.forEach(transfer ->
                        door.wish("/transfers/%s/arrive".formatted(transfer), """
                        {"reels":[{"reelId":"%s","measured":"%d mm"}],"happenedAt":"%s"}""", reel, step.amount(), when(step)));
            default -> transfers.forEach(transfer -> door.wish("/transfers/%s/call-off".formatted(transfer), """
                        {"reason":"rain"}"""));
        }
    }

    private void use(StockStep step, String reel) {
        PersonId person = new PersonId("P-" + step.other());
        Place crew = Place.crew(person);
        Place tree = Place.tree(new TreeId(prefix + "T" + step.other()));
        Place bag = Place.bag(new BagId(prefix + "BAG"));
        switch (step.kind()) {
            case HAND_OUT ->
                door.wish(
                        "/handouts",
                        """
                        {"kitId":"%s","depotId":"%s","crewId":"C","personId":"%s","reels":["%s"],"happenedAt":"%s"}""",
                        prefix + "K" + made++,
                        step.yes() ? "SIM-D" : "SIM-E",
                        person,
                        reel,
                        when(step));
            case FIT -> fact(step, reel, crew, tree);
            case TAKE_DOWN -> fact(step, reel, tree, bag);
            case DISPOSE -> fact(step, reel, bag, Place.disposed(new LoadId(prefix + "LOAD")));
            default -> door.wish("/returns", """
                        {"personId":"%s","depotId":"SIM-D","reels":[{"reelId":"%s","measured":"%d mm"}],"happenedAt":"%s"}""", person, reel, step.amount(), when(step));
        }
    }

    private void fact(StockStep step, String reel, Place source, Place target) {
        SiteId site = new SiteId("SIM-" + step.other());
        Occurred late = new Occurred(happened(step), happened(step).plus(60, ChronoUnit.DAYS));
        work.inOneTransaction(() -> {
            commands.send(new ReelCommand.RecordFact(
                    new ReelId(reel), "fact " + made, source, target, Length.ofMm(step.amount()), site, WHO, late));
            return true;
        });
    }

    private void correct(StockStep step, String reel) {
        String place = step.other() == 0 ? "missing:P-CAR" : "missing:P-" + step.other();
        Occurred now = Occurred.at(happened(step));
        switch (step.kind()) {
            case SETTLE -> door.wish("/discrepancies/settle", """
                        {"material":"reel","id":"%s","place":"%s","reason":"looked everywhere"}""", reel, place);
            case ADJUST ->
                wish(new ReelCommand.Adjust(
                        new ReelId(reel),
                        Place.parse("depot:SIM-D"),
                        step.yes() ? step.amount() : -step.amount(),
                        "count",
                        "counted",
                        WHO,
                        now));
            case CHANGE_COST, FREIGHT -> door.revalue(reel, step.yes() ? step.amount() : -step.amount() / 3, now);
            case WRITE_DOWN -> door.wish("/write-downs", """
                        {"holding":"REEL","id":"%s","amount":{"minor":%d,"currency":"USD"},"reason":"dried out","happenedAt":"%s"}""", reel, step.amount() / 9, when(step));
            default -> closeNextMonth();
        }
    }

    /** Signs what is not clean and closes the next month, so that later facts of it are late. */
    private void closeNextMonth() {
        JsonNode months = door.get("/periods");
        String month = months.path("toClose").asString("");
        if (month.isEmpty()) {
            return;
        }
        for (JsonNode check : door.get("/periods/" + month).path("checks")) {
            if (!check.path("passes").asBoolean()) {
                door.wish(
                        "/periods/%s/sign".formatted(month),
                        """
                        {"check":"%s","reason":"known"}""",
                        check.path("check").asString());
            }
        }
        door.wish("/periods/%s/close".formatted(month), "{}");
    }

    private void wish(ReelCommand command) {
        try {
            work.inOneTransaction(() -> {
                commands.send(command);
                return true;
            });
        } catch (Refusal refused) {
            door.refused();
        }
    }

    private static Instant happened(StockStep step) {
        return MAY.plus(step.day(), ChronoUnit.DAYS);
    }

    private static String when(StockStep step) {
        return happened(step).toString();
    }
}
