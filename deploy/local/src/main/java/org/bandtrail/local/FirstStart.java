package org.bandtrail.local;

import java.util.List;
import java.util.function.Consumer;
import org.bandtrail.local.doors.SeasonStopped;
import org.bandtrail.local.season.DemoSeason;
import org.bandtrail.local.season.Progress;

/**
 * What is done once in the life of a data folder: the demo season with its people is loaded, or, for an empty
 * installation, one lead is created who can create the others. A first start that was interrupted is taken up again
 * by the next one, and does nothing twice.
 */
final class FirstStart {

    private static final String SEASON_LOADED = "season-loaded";
    private static final String LEAD_CREATED = "lead-created";

    private final House house;
    private final LauncherOptions options;
    private final Consumer<String> say;

    FirstStart(House house, LauncherOptions options, Consumer<String> say) {
        this.house = house;
        this.options = options;
        this.say = say;
    }

    /**
     * Does what has not been done yet.
     *
     * @param progress told how far the season is
     * @throws CannotStart if the season cannot be loaded; what was loaded stays
     */
    void run(Progress progress) {
        if (options.season() && !house.folder().isDone(SEASON_LOADED)) {
            loadSeason(progress);
            house.folder().done(SEASON_LOADED);
        }
        if (people().equals(List.of(DemoPerson.FIRST_LEAD)) && !house.folder().isDone(LEAD_CREATED)) {
            new Reception(house).letIn(people());
            house.folder().done(LEAD_CREATED);
        }
    }

    /**
     * Who can sign in with the password of the first start.
     *
     * @return the people of the season if it is loaded, otherwise the first lead
     */
    List<DemoPerson> people() {
        return house.folder().isDone(SEASON_LOADED)
                ? DemoPerson.all(options.demoData())
                : List.of(DemoPerson.FIRST_LEAD);
    }

    private void loadSeason(Progress progress) {
        say.accept("Loading the demo season through the front doors (only at the first start)");
        new Reception(house).letIn(DemoPerson.all(options.demoData()));
        try {
            DemoSeason season = new DemoSeason(
                    options.demoData(),
                    house.at(Service.SUPPLY_STOCK),
                    house.at(Service.SITE_INSTALLS),
                    house.at(Service.INSPECTIONS),
                    house.at(Service.FRONT_DESK),
                    house.serviceKey());
            say.accept(season.load(progress, house.clock()::set));
        } catch (SeasonStopped reason) {
            throw new CannotStart(reason.getMessage() + "\nThe next start goes on from there.", reason);
        } finally {
            house.clock().setBack();
        }
    }
}
