package org.bandtrail.supplystock.siteshares;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.YearMonth;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.grants.GrantRow;
import org.bandtrail.supplystock.grants.Grants;
import org.bandtrail.supplystock.periods.Periods;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Who pays for a site, over HTTP. */
@RestController
@Tag(name = "site shares", description = "In which shares grants pay for a site")
final class SiteShareController {
    private static final int MOST = 1_000;
    private final Work work;
    private final Commands commands;
    private final SiteShares shares;
    private final Grants grants;
    private final Periods periods;
    private final Clock clock;

    SiteShareController(Work work, Commands commands, SiteShares shares, Grants grants, Periods periods, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.shares = shares;
        this.grants = grants;
        this.periods = periods;
        this.clock = clock;
    }

    @GetMapping("/site-shares")
    @Operation(summary = "Shares of every site from every month they begin")
    Rows list(@RequestParam(defaultValue = "") String after, @RequestParam(defaultValue = "200") int limit) {
        int most = Math.clamp(limit, 1, MOST);
        List<SiteShareRow> rows = shares.rows(after, most + 1);
        boolean more = rows.size() > most;
        List<SiteShareRow> page = more ? rows.subList(0, most) : rows;
        return new Rows(
                page, more ? page.getLast().siteId() + " " + page.getLast().from() : null);
    }

    @PostMapping("/site-shares")
    @Operation(summary = "Set in which shares grants pay for a site from a month on; they add up to 1000 thousandths")
    Known set(@RequestBody SetShares request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            for (GrantShare share : request.shares()) {
                goodIn(request.siteId(), request.from(), grants.known(share.grantId()));
            }
            commands.send(new SiteShareCommand.SetShares(
                    request.siteId(),
                    request.from(),
                    request.shares(),
                    periods.closedThrough(),
                    by.id(),
                    Occurred.at(clock.instant())));
            return new Known(request.siteId(), request.from());
        });
    }

    private static void goodIn(SiteId site, YearMonth month, GrantRow grant) {
        if (grant.from().isAfter(month.atEndOfMonth()) || grant.until().isBefore(month.atDay(1))) {
            throw new SiteShareRefused.GrantNotGoodThen(site, month, grant);
        }
    }

    record SetShares(UUID commandId, SiteId siteId, YearMonth from, List<GrantShare> shares) {}

    record Known(SiteId siteId, YearMonth from) {}

    record Rows(List<SiteShareRow> rows, @Nullable String next) {}
}
