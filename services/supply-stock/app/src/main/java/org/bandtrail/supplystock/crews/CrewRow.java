package org.bandtrail.supplystock.crews;

import java.util.List;

/** One crew as people see it, with the pseudonymous identities of its people. */
public record CrewRow(String crewId, String name, String depotId, List<String> people) {}
