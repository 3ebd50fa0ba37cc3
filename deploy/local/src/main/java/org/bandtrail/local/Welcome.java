package org.bandtrail.local;

/** What a person is told when everything is up: where to look and as whom. */
final class Welcome {

    private Welcome() {}

    /**
     * The text printed at the end of a start.
     *
     * @param house what is running
     * @return several lines
     */
    static String text(House house) {
        return """

                Bandtrail is running. Open %s

                Sign in as      password        and you may
                  depot         depot           receive, hand out, take back, count
                  crew          crew            fit bands, visit, take down
                  finance       finance         see cost and spend
                  lead          lead            do all of it

                The services, each with its documentation under /swagger-ui:
                  supply-stock  %s
                  site-installs %s
                  inspections   %s

                Data and logs are in the data folder and survive restarts. Stop with Ctrl-C.""".formatted(
                        house.at(Service.FRONT_DESK),
                        house.at(Service.SUPPLY_STOCK),
                        house.at(Service.SITE_INSTALLS),
                        house.at(Service.INSPECTIONS));
    }
}
