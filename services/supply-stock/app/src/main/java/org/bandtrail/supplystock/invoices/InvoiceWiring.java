package org.bandtrail.supplystock.invoices;

import org.bandtrail.eventstore.AggregateOf;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Declares an invoice to the event store. */
@Configuration(proxyBeanMethods = false)
class InvoiceWiring {

    @Bean
    AggregateOf<?> invoiceAggregate() {
        return InvoiceAggregate.DECLARED;
    }
}
