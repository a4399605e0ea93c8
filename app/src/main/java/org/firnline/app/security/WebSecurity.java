package org.firnline.app.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.firnline.app.store.people.ApiTokens;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AnonymousAuthenticationFilter;
import org.springframework.security.web.context.SecurityContextHolderFilter;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/**
 * Who comes in, and what a browser may do. On the loopback address a laboratory that is not shared
 * asks for nothing; once shared, everybody signs in. Every other guard is always on.
 */
@Configuration(proxyBeanMethods = false)
class WebSecurity {
  private static final String ONLY_OUR_OWN =
      "default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self';"
          + " frame-ancestors 'none'";
  private static final String SIGN_IN = "/sign-in";
  private static final Set<String> OWN_PAGES = Set.of("same-origin", "none");

  @Bean
  SecurityFilterChain doors(
      HttpSecurity http,
      RightsCheck rights,
      Passwords passwords,
      ApiTokens tokens,
      Sharing sharing,
      @Value("${firnline.hosts:}") List<String> hosts)
      throws Exception {
    return http.authorizeHttpRequests(every -> every.anyRequest().access(rights))
        .authenticationProvider(new SignInProvider(passwords))
        .formLogin(
            form ->
                form.loginPage(SIGN_IN)
                    .usernameParameter("login")
                    .authenticationDetailsSource(SignInProvider::codeOf)
                    .defaultSuccessUrl("/", true)
                    .failureUrl(SIGN_IN + "?wrong"))
        .logout(out -> out.logoutUrl("/sign-out").logoutSuccessUrl(SIGN_IN + "?out"))
        .exceptionHandling(
            refused ->
                refused
                    .authenticationEntryPoint((request, response, e) -> askIn(request, response))
                    .accessDeniedHandler((request, response, e) -> refuse(request, response)))
        .csrf(
            csrf ->
                csrf.csrfTokenRepository(tokenInCookie())
                    .ignoringRequestMatchers(request -> needsNoToken(request, sharing)))
        .requestCache(cache -> cache.disable())
        .anonymous(whoever -> whoever.principal(Single.PERSON))
        .addFilterBefore(new LoopbackHostFilter(hosts), SecurityContextHolderFilter.class)
        .addFilterBefore(new TokenFilter(tokens), AnonymousAuthenticationFilter.class)
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

  /**
   * A key is no cookie: no foreign page can make a browser send it. Without accounts the interface
   * for programs is open to this machine, but not to what a foreign page sends through its browser.
   */
  private static boolean needsNoToken(HttpServletRequest request, Sharing sharing) {
    @Nullable String from = request.getHeader("Sec-Fetch-Site");
    boolean ownPage = from == null || OWN_PAGES.contains(from);
    return Problems.isWanted(request)
        && (TokenFilter.showsKey(request) || (ownPage && !sharing.isOn()));
  }

  private static void askIn(HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    if (Problems.isWanted(request)) {
      Problems.send(
          response,
          HttpServletResponse.SC_UNAUTHORIZED,
          "A key is needed",
          "This laboratory is shared. Send a key in the header Authorization.");
    } else {
      response.sendRedirect(SIGN_IN);
    }
  }

  private static void refuse(HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    if (Problems.isWanted(request)) {
      Problems.send(
          response,
          HttpServletResponse.SC_FORBIDDEN,
          "Not allowed",
          "The key or account does not allow this.");
    } else {
      response.sendError(HttpServletResponse.SC_FORBIDDEN);
    }
  }

  private static CookieCsrfTokenRepository tokenInCookie() {
    CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
    tokens.setCookieName("firnline-token");
    tokens.setCookieCustomizer(cookie -> cookie.httpOnly(true).sameSite("Strict"));
    return tokens;
  }
}
