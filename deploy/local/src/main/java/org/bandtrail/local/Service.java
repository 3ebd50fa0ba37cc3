package org.bandtrail.local;

import java.net.URI;

/** The four services in the order in which they are started. They are stopped in the opposite order. */
public enum Service {
    /** The ledger of reels, batches, handouts, cost and reordering. */
    SUPPLY_STOCK("supply-stock", "org.bandtrail.supplystock.SupplyStockApplication"),
    /** Sites, trees and bands. */
    SITE_INSTALLS("site-installs", "org.bandtrail.siteinstalls.SiteInstallsApplication"),
    /** Visits, replacements, teardown and disposal. */
    INSPECTIONS("inspections", "org.bandtrail.inspections.InspectionsApplication"),
    /** The web pages. */
    FRONT_DESK("front-desk", "org.bandtrail.frontdesk.FrontDeskApplication");

    private final String id;
    private final String application;

    Service(String id, String application) {
        this.id = id;
        this.application = application;
    }

    /**
     * The name in URLs, property names and configuration files.
     *
     * @return lower case, words joined by hyphens
     */
    public String id() {
        return id;
    }

    /**
     * The service's own database, which only its own user can open.
     *
     * @return lower case, words joined by underscores; also the name of the database user
     */
    public String database() {
        return id.replace('-', '_');
    }

    /**
     * The Spring Boot application that is the service.
     *
     * @return its fully qualified class name
     */
    String application() {
        return application;
    }

    /**
     * Where the service listens when it has the given port.
     *
     * @param port its TCP port on this machine
     * @return its base address without a slash at the end
     */
    public static URI at(int port) {
        return URI.create("http://127.0.0.1:" + port);
    }
}
