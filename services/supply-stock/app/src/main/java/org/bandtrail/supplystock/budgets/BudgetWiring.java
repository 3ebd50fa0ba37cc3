package org.bandtrail.supplystock.budgets;

import org.axonframework.serialization.upcasting.event.SingleEventUpcaster;
import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares a budget to the event store. */
@Configuration(proxyBeanMethods = false)
class BudgetWiring {

    @Bean
    AggregateOf<?> budgetAggregate() {
        return BudgetAggregate.DECLARED;
    }

    @Bean
    SingleEventUpcaster budgetWithoutCounts() {
        return new BudgetWithoutCounts();
    }
}
