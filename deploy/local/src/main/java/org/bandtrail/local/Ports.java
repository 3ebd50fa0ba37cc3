package org.bandtrail.local;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The TCP port of each service, on the loopback address only.
 *
 * @param byService one port per service, 0 to 65535; 0 stands for any free port until {@link #claimed} has chosen
 */
public record Ports(Map<Service, Integer> byService) {

    /** The ports of an ordinary start: 8100 for the pages, 8101 to 8103 for the services behind them. */
    public static final Ports DEFAULT = parse("8100,8101,8102,8103");

    private static final int HIGHEST = 65_535;

    /** Keeps an unmodifiable copy that names every service. */
    public Ports {
        if (byService.size() != Service.values().length) {
            throw new CannotStart("Every service needs a port, found only " + byService);
        }
        byService = Map.copyOf(byService);
    }

    /**
     * Reads ports from the command line.
     *
     * @param text four numbers with commas: front-desk, supply-stock, site-installs, inspections
     * @return the ports
     * @throws CannotStart if there are not four numbers from 0 to 65535
     */
    public static Ports parse(String text) {
        String[] parts = text.split(",", -1);
        Service[] order = {Service.FRONT_DESK, Service.SUPPLY_STOCK, Service.SITE_INSTALLS, Service.INSPECTIONS};
        if (parts.length != order.length) {
            throw new CannotStart("--ports [" + text + "] needs four numbers, such as 8100,8101,8102,8103.");
        }
        Map<Service, Integer> ports = new EnumMap<>(Service.class);
        for (int i = 0; i < order.length; i++) {
            ports.put(order[i], number(parts[i].strip()));
        }
        return new Ports(ports);
    }

    private static int number(String part) {
        if (part.matches("\\d{1,5}") && Integer.parseInt(part) <= HIGHEST) {
            return Integer.parseInt(part);
        }
        throw new CannotStart("[" + part + "] is not a port. A port is a number from 0 to " + HIGHEST + ".");
    }

    /**
     * The port of one service.
     *
     * @param service the service
     * @return its port
     */
    public int of(Service service) {
        return byService.getOrDefault(service, 0);
    }

    /**
     * Makes sure, before anything is started, that every port can be had, and chooses one for each 0.
     *
     * @return the same ports with every 0 replaced by a free port
     * @throws CannotStart if a port is in use; the message names the port and its service
     */
    public Ports claimed() {
        Map<Service, Integer> chosen = new EnumMap<>(Service.class);
        List<ServerSocket> held = new ArrayList<>();
        try {
            for (Service service : Service.values()) {
                // All sockets stay open until the last port is known, or two services might be given the same one.
                ServerSocket socket = open(service);
                held.add(socket);
                chosen.put(service, socket.getLocalPort());
            }
        } finally {
            held.forEach(Ports::close);
        }
        return new Ports(chosen);
    }

    private ServerSocket open(Service service) {
        try {
            ServerSocket socket = new ServerSocket();
            socket.setReuseAddress(true);
            socket.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), of(service)));
            return socket;
        } catch (IOException inUse) {
            throw new CannotStart(
                    "Port " + of(service) + " for " + service.id() + " is in use. Stop the program that has it,"
                            + " or choose other ports with --ports (0 takes any free one).",
                    inUse);
        }
    }

    private static void close(ServerSocket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
