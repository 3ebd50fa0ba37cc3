package org.bandtrail.supplystock.countrules;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to the rules. */
public sealed interface CountRuleEvent {
    /** Always {@link CountRule#PROGRAMME}. */
    String programme();

    /** These rules hold from now on. */
    @StoredAs("count-rules.set")
    @Revision("1")
    record RulesSet(String programme, CountRules rules, String source, String reason, PersonId by, Occurred occurred)
            implements CountRuleEvent {}
}
