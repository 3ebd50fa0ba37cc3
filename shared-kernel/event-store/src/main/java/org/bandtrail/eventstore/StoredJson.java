package org.bandtrail.eventstore;

import tools.jackson.databind.JacksonModule;

/** A service's own value types in stored events; a bean of this type keeps them out of the mapper for HTTP. */
public record StoredJson(JacksonModule module) {}
