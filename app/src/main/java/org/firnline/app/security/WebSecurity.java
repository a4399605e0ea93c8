package org.firnline.app.security;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.context.SecurityContextHolderFilter;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/**
 * Single-person mode: whoever sits at this machine may use the laboratory without a login, because
 * the server listens on the loopback address only. Every other guard is on.
 */
@Configuration(proxyBeanMethods = false)
class WebSecurity {
  private static final String ONLY_OUR_OWN =
      "default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self';"
          + " frame-ancestors 'none'";

  private static final String API = "/api/v1/**";

  @Bean
  SecurityFilterChain onePersonOnLoopback(HttpSecurity http) throws Exception {
    return http.authorizeHttpRequests(anyone -> anyone.anyRequest().permitAll())
        // The JSON interface keeps nothing, so a forged request would change nothing.
        .csrf(csrf -> csrf.csrfTokenRepository(tokenInCookie()).ignoringRequestMatchers(API))
        .requestCache(cache -> cache.disable())
        .anonymous(whoever -> whoever.principal(Single.PERSON))
        .addFilterBefore(new LoopbackHostFilter(), SecurityContextHolderFilter.class)
        .headers(
            headers ->
                headers
                    .contentSecurityPolicy(policy -> policy.policyDirectives(ONLY_OUR_OWN))
                    .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
                    .permissionsPolicyHeader(
                        permissions ->
                            permissions.policy("camera=(), microphone=(), geolocation=()"))
                    .frameOptions(frames -> frames.deny()))
        .build();
  }

  private static CookieCsrfTokenRepository tokenInCookie() {
    CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
    tokens.setCookieName("firnline-token");
    tokens.setCookieCustomizer(cookie -> cookie.httpOnly(true).sameSite("Strict"));
    return tokens;
  }
}
