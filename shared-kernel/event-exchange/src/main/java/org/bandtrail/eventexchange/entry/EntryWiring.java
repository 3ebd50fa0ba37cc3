package org.bandtrail.eventexchange.entry;

import java.util.List;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.jackson.autoconfigure.JsonMapperBuilderCustomizer;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.core.Ordered;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import tools.jackson.databind.DeserializationFeature;

/** Puts the shared door in front of a service's controllers. Brought in by EventExchangeWiring. */
@Configuration(proxyBeanMethods = false)
@Import({ProblemAdvice.class, ReadYourWrites.class})
public class EntryWiring implements WebMvcConfigurer {
    private static final int AFTER_ENCODING = Ordered.HIGHEST_PRECEDENCE + 100;

    @Override
    public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
        resolvers.add(new ActingPersonArgument());
    }

    /** The filter, before all others but the encoding. */
    @Bean
    FilterRegistrationBean<ServiceKeyFilter> serviceKeyFilter(@Value("${bandtrail.service-key}") String serviceKey) {
        var registration = new FilterRegistrationBean<>(new ServiceKeyFilter(serviceKey));
        registration.setOrder(AFTER_ENCODING);
        return registration;
    }

    /** A field that is misspelt or missing is refused by name: ignored, it would be a lost fact. */
    @Bean
    JsonMapperBuilderCustomizer strictRequests() {
        return builder -> builder.addModule(NullMarkedRecords.module())
                .enable(
                        DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES,
                        DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES);
    }
}
