package org.bandtrail.frontdesk.people;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpMethod;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;

/**
 * Who may open which page and send which form. Whoever signed in reads everything but people and the forms of others; what
 * nobody is named for is for the lead. The first line that fits counts.
 *
 * @param method POST for a form that is sent, null for a page as well
 * @param roles who may
 * @param paths patterns of addresses
 */
record WhoMay(@Nullable HttpMethod method, List<Role> roles, String... paths) {
    private static final List<Role> DEPOT = List.of(Role.DEPOT, Role.LEAD);
    private static final List<Role> CREW = List.of(Role.CREW, Role.LEAD);
    private static final List<Role> DEPOT_AND_CREW = List.of(Role.DEPOT, Role.CREW, Role.LEAD);
    private static final List<Role> MONEY = List.of(Role.FINANCE, Role.LEAD);
    private static final List<Role> DEPOT_AND_MONEY = List.of(Role.DEPOT, Role.FINANCE, Role.LEAD);

    private static final List<WhoMay> RULES = List.of(
            page(List.of(Role.LEAD), "/people", "/people/**", "/plans/new", "/plans/*/change"),
            form(List.of(Role.values()), "/settings"),
            form(DEPOT, "/reels", "/batches", "/handouts", "/returns", "/loads", "/audit/settle"),
            page(DEPOT, "/reels/new", "/batches/new", "/handouts/new", "/returns/new", "/loads/new", "/kits/new"),
            page(DEPOT, "/cut-plans/new"),
            form(DEPOT, "/cut-plans", "/cut-plans/**"),
            form(DEPOT, "/kits", "/kits/plan", "/kits/*/hand-out", "/kits/*/release"),
            form(List.of(Role.DEPOT, Role.CREW, Role.LEAD), "/kits/*/sign"),
            form(DEPOT, "/orders", "/orders/**", "/deliveries", "/deliveries/**"),
            page(DEPOT, "/orders/new", "/deliveries/new"),
            form(DEPOT_AND_MONEY, "/suppliers", "/suppliers/**", "/reorder/**"),
            form(DEPOT, "/transfers", "/transfers/**", "/bins", "/bins/put", "/vehicles", "/vehicles/**", "/take-back"),
            form(DEPOT, "/set-aside", "/set-aside/release", "/slittings", "/set-up/**"),
            page(DEPOT, "/transfers/new", "/slittings/new", "/set-up/**"),
            form(List.of(Role.LEAD), "/counts/rules"),
            form(DEPOT, "/counts", "/counts/**", "/discrepancies/**", "/recalls"),
            page(DEPOT, "/counts/new", "/recalls/new"),
            form(DEPOT, "/sites", "/trees", "/trees/duplicates", "/trees/duplicates/undo"),
            form(List.of(Role.DEPOT, Role.CREW, Role.LEAD), "/trees/*/correct"),
            form(CREW, "/trees/*/girths", "/trees/*/host-check", "/trees/*/gone", "/trees/*/found-again", "/photos"),
            page(List.of(Role.DEPOT, Role.CREW, Role.LEAD), "/trees/*/correct"),
            page(CREW, "/trees/*/measure", "/trees/*/host-check", "/trees/*/gone"),
            page(List.of(Role.LEAD), "/policies/new"),
            page(DEPOT, "/import", "/import/**", "/sites/new", "/trees/new"),
            page(List.of(Role.LEAD), "/consents/warning", "/sites/*/change", "/sites/*/consents/new"),
            form(DEPOT_AND_CREW, "/mesh-pieces", "/mesh-pieces/*/grade", "/mesh-pieces/*/put"),
            page(DEPOT_AND_CREW, "/mesh-pieces/new"),
            form(CREW, "/bands", "/bands/**"),
            page(CREW, "/bands/new", "/bands/*/visit", "/bands/*/take-down"),
            form(MONEY, "/cost-policies", "/months/**", "/grants", "/grants/**", "/budgets", "/budgets/**"),
            form(MONEY, "/journal/**", "/invoices/**", "/landed-costs/**", "/write-downs", "/tolerances"),
            page(MONEY, "/invoices/new", "/landed-costs/new", "/grants/new", "/grants/shares/new", "/budgets/new"),
            form(List.of(Role.LEAD), "/**"));

    private static WhoMay form(List<Role> roles, String... paths) {
        return new WhoMay(HttpMethod.POST, roles, paths);
    }

    private static WhoMay page(List<Role> roles, String... paths) {
        return new WhoMay(null, roles, paths);
    }

    /** Lets these rules decide, in their order. */
    static void decide(
            AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry requests) {
        for (WhoMay rule : RULES) {
            String[] roles = rule.roles().stream().map(Role::name).toArray(String[]::new);
            if (rule.method() == null) {
                requests.requestMatchers(rule.paths()).hasAnyRole(roles);
            } else {
                requests.requestMatchers(rule.method(), rule.paths()).hasAnyRole(roles);
            }
        }
        requests.anyRequest().authenticated();
    }
}
