package org.firnline.app.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.firnline.app.security.Sharing;
import org.firnline.app.store.DataFolder;
import org.firnline.app.store.KeptPlans;
import org.firnline.app.store.KeptSettings;
import org.firnline.app.store.audit.AuditEntry;
import org.firnline.app.store.audit.AuditTrail;
import org.firnline.app.store.audit.Profile;
import org.firnline.app.web.WebApplication;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;

/** A shared laboratory from its first start on, as browsers and devices meet it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class SharedLaboratoryTest {
  private static final String GOOD = "heron walks slowly";
  private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\"[^>]*value=\"([^\"]+)\"");
  private static final Pattern LINK = Pattern.compile("(/invitation/[A-Za-z0-9_-]+)");
  private static final Pattern KEY = Pattern.compile("(firn_[A-Za-z0-9_-]+)");

  private ConfigurableApplicationContext served;
  private URI home;
  private String setup;
  private Path folder;
  private final Visitor admin = new Visitor();

  @BeforeAll
  void serve(@TempDir Path given) {
    folder = given;
    served =
        WebApplication.start(
            new DataFolder(given.resolve("laboratory")), 0, Map.of("firnline.share", "true"));
    home = URI.create(WebApplication.address(served));
    setup = "/invitation/" + served.getBean(Sharing.class).setupSecret().orElseThrow();
  }

  @AfterAll
  void stop() {
    served.close();
  }

  /** One browser with its cookies. */
  private final class Visitor {
    private final HttpClient client =
        HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
      return client.send(
          HttpRequest.newBuilder(home.resolve(path)).build(), HttpResponse.BodyHandlers.ofString());
    }

    /** Sends a form as the page at this address would. */
    HttpResponse<String> send(String page, String path, Map<String, String> fields)
        throws IOException, InterruptedException {
      Matcher token = TOKEN.matcher(get(page).body());
      String sent = token.find() ? token.group(1) : "";
      String body =
          fields.entrySet().stream()
              .map(field -> field.getKey() + "=" + encoded(field.getValue()))
              .collect(Collectors.joining("&"));
      return client.send(
          HttpRequest.newBuilder(home.resolve(path))
              .header("Content-Type", "application/x-www-form-urlencoded")
              .POST(HttpRequest.BodyPublishers.ofString(body + "&_csrf=" + encoded(sent)))
              .build(),
          HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<String> signIn(String login, String password)
        throws IOException, InterruptedException {
      return send("/sign-in", "/sign-in", Map.of("login", login, "password", password));
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private int withKey(String key, String method, String path)
      throws IOException, InterruptedException {
    return HttpClient.newHttpClient()
        .send(
            HttpRequest.newBuilder(home.resolve(path))
                .header("Authorization", "Bearer " + key)
                .header("Content-Type", "application/yaml")
                .method(method, HttpRequest.BodyPublishers.ofString("plan: x\n"))
                .build(),
            HttpResponse.BodyHandlers.discarding())
        .statusCode();
  }

  private List<AuditEntry> entries(String action) {
    return served.getBean(AuditTrail.class).after(0, 1_000).stream()
        .filter(entry -> entry.action().equals(action))
        .toList();
  }

  @Test
  @Order(1)
  void nothing_is_seen_before_somebody_signs_in() throws Exception {
    Visitor stranger = new Visitor();
    HttpResponse<String> page = stranger.get("/");
    assertThat(page.statusCode()).isEqualTo(302);
    assertThat(page.headers().firstValue("Location").orElse("")).endsWith("/sign-in");
    HttpResponse<String> program = stranger.get("/api/v1/runs");
    assertThat(program.statusCode()).isEqualTo(401);
    assertThat(program.headers().firstValue("Content-Type").orElse(""))
        .startsWith("application/problem+json");
    assertThat(stranger.get("/style/firnline.css").statusCode()).isEqualTo(200);
  }

  @Test
  @Order(2)
  void no_password_is_there_until_the_setup_link_was_used_once() throws Exception {
    assertThat(admin.signIn("admin", "admin").headers().firstValue("Location").orElse(""))
        .contains("wrong");
    assertThat(admin.get(setup).body()).contains("name=\"login\"");
    Map<String, String> poor =
        Map.of("login", "rowan", "name", "Rowan Marsh", "password", "short", "again", "short");
    assertThat(admin.send(setup, setup, poor).statusCode()).isEqualTo(422);
    Map<String, String> good =
        Map.of("login", "rowan", "name", "Rowan Marsh", "password", GOOD, "again", GOOD);
    assertThat(admin.send(setup, setup, good).statusCode()).isEqualTo(302);
    assertThat(admin.get(setup).statusCode()).isEqualTo(404);
    assertThat(served.getBean(Sharing.class).setupSecret()).isEmpty();
    assertThat(admin.signIn("Rowan", GOOD).headers().firstValue("Location").orElse(""))
        .doesNotContain("wrong");
    assertThat(admin.get("/").statusCode()).isEqualTo(200);
    assertThat(new Visitor().get("/sign-in").headers().allValues("Set-Cookie").toString())
        .contains("HttpOnly", "SameSite=Strict");
  }

  @Test
  @Order(3)
  void r_sig_04_a_login_is_never_given_twice() throws Exception {
    Map<String, String> fern = Map.of("login", "fern", "name", "Fern Moss", "roles", "viewer");
    HttpResponse<String> added = admin.send("/settings/people", "/settings/people", fern);
    Matcher link = LINK.matcher(added.body());
    assertThat(link.find()).isTrue();
    Visitor invited = new Visitor();
    Map<String, String> chosen = Map.of("password", GOOD, "again", GOOD);
    assertThat(invited.send(link.group(1), link.group(1), chosen).statusCode()).isEqualTo(302);
    assertThat(invited.signIn("fern", GOOD).headers().firstValue("Location").orElse(""))
        .doesNotContain("wrong");
    assertThat(admin.send("/settings/people", "/settings/people", fern).statusCode())
        .isEqualTo(422);
    assertThat(admin.send("/settings/people", "/settings/people/2/roles", Map.of()).statusCode())
        .isEqualTo(302);
    assertThat(invited.get("/").statusCode()).as("closed accounts end at once").isEqualTo(403);
    assertThat(admin.send("/settings/people", "/settings/people", fern).statusCode())
        .isEqualTo(422);
    assertThat(
            admin
                .send("/settings/people", "/settings/people/1/roles", Map.of("active", "true"))
                .statusCode())
        .as("the last administrator stays")
        .isEqualTo(422);
  }

  @Test
  @Order(4)
  void r_sys_02_a_viewer_changes_nothing_and_looks_after_nobody() throws Exception {
    Map<String, String> viewer = Map.of("roles", "viewer", "active", "true");
    admin.send("/settings/people", "/settings/people/2/roles", viewer);
    Visitor fern = new Visitor();
    fern.signIn("fern", GOOD);
    assertThat(fern.get("/runs").statusCode()).isEqualTo(200);
    assertThat(fern.get("/settings/people").statusCode()).isEqualTo(403);
    assertThat(fern.send("/settings", "/settings/place", Map.of("name", "Fern's")).statusCode())
        .isEqualTo(403);
    assertThat(fern.send("/plan", "/plan", Map.of("plan", "x")).statusCode()).isEqualTo(403);
    assertThat(entries("roles")).isNotEmpty();
  }

  @Test
  @Order(5)
  void r_sig_05_an_account_rests_after_five_wrong_passwords() throws Exception {
    Visitor guesser = new Visitor();
    int before = entries("sign-in-failed").size();
    for (int attempt = 0; attempt < 5; attempt++) {
      guesser.signIn("fern", "wrong password " + attempt);
    }
    assertThat(entries("sign-in-failed")).hasSizeGreaterThanOrEqualTo(before + 5);
    assertThat(guesser.signIn("fern", GOOD).headers().firstValue("Location").orElse(""))
        .as("the right password does not help now")
        .contains("wrong");
    assertThat(guesser.get("/runs").statusCode()).isEqualTo(302);
  }

  @Test
  @Order(6)
  void a_key_is_shown_once_kept_as_a_hash_and_opens_its_scope_only() throws Exception {
    Map<String, String> wanted = Map.of("name", "logger of Fen 2", "scopes", "ask", "days", "30");
    String page = admin.send("/settings/tokens", "/settings/tokens", wanted).body();
    Matcher shown = KEY.matcher(page);
    assertThat(shown.find()).isTrue();
    String key = shown.group(1);
    assertThat(admin.get("/settings/tokens").body()).doesNotContain(key);
    byte[] database = Files.readAllBytes(folder.resolve("laboratory/firnline.db"));
    assertThat(new String(database, StandardCharsets.ISO_8859_1)).doesNotContain(key);
    assertThat(withKey(key, "POST", "/api/v1/plan")).isEqualTo(422);
    assertThat(withKey(key, "POST", "/runs")).isEqualTo(403);
    assertThat(withKey(key, "GET", "/settings/people")).isEqualTo(403);
    assertThat(withKey("firn_wrong", "POST", "/api/v1/plan")).isEqualTo(401);
    admin.send("/settings/tokens", "/settings/tokens/1/revoke", Map.of());
    assertThat(withKey(key, "POST", "/api/v1/plan")).isEqualTo(401);
    assertThat(admin.send("/settings/tokens", "/settings/tokens", Map.of("name", "x")).statusCode())
        .isEqualTo(422);
  }

  @Test
  @Order(7)
  void r_aud_06_the_audit_is_searched_and_exported() throws Exception {
    String page = admin.get("/settings/audit?subject=person").body();
    assertThat(page).contains("fern").doesNotContain("$2a$", "$2b$");
    HttpResponse<String> csv = admin.get("/settings/audit.csv?action=sign-in");
    assertThat(csv.headers().firstValue("Content-Type").orElse("")).startsWith("text/csv");
    assertThat(csv.body()).startsWith("number,at_utc").contains("\"sign-in\",\"rowan\"");
    assertThat(entries("export")).isNotEmpty();
  }

  @Test
  @Order(8)
  void r_aud_05_nobody_can_send_a_change_of_the_audit() throws Exception {
    for (String path : List.of("/settings/audit", "/settings/audit/1", "/settings/audit.csv")) {
      assertThat(admin.send("/settings", path, Map.of("why", "x")).statusCode())
          .as(path)
          .isIn(403, 404, 405);
    }
  }

  @Test
  @Order(9)
  void r_aud_02_a_controlled_laboratory_asks_why_and_sends_the_form_again() throws Exception {
    admin.send("/settings", "/settings/profile", Map.of("profile", "controlled"));
    assertThat(served.getBean(KeptSettings.class).find(Profile.SETTING)).contains("controlled");
    Map<String, String> viewer = Map.of("roles", "operator", "active", "true");
    HttpResponse<String> asked = admin.send("/settings/people", "/settings/people/2/roles", viewer);
    assertThat(asked.statusCode()).isEqualTo(422);
    assertThat(asked.body()).contains("name=\"why\"", "name=\"roles\" value=\"operator\"");
    Map<String, String> because =
        Map.of("roles", "operator", "active", "true", "why", "trained on 20 November");
    assertThat(admin.send("/settings/people", "/settings/people/2/roles", because).statusCode())
        .isEqualTo(302);
    assertThat(entries("roles").get(entries("roles").size() - 1).occasion().why())
        .isEqualTo("trained on 20 November");
  }

  @Test
  @Order(10)
  void a_person_changes_the_own_password() throws Exception {
    Map<String, String> wrong =
        Map.of("present", "not it", "password", GOOD + "!", "again", GOOD + "!");
    assertThat(admin.send("/settings/me", "/settings/me/password", wrong).statusCode())
        .isEqualTo(422);
    Map<String, String> unlike =
        Map.of("present", GOOD, "password", GOOD + "!", "again", GOOD + "?");
    assertThat(admin.send("/settings/me", "/settings/me/password", unlike).statusCode())
        .isEqualTo(422);
    Map<String, String> right =
        Map.of("present", GOOD, "password", GOOD + "!", "again", GOOD + "!");
    assertThat(admin.send("/settings/me", "/settings/me/password", right).statusCode())
        .isEqualTo(302);
    Map<String, String> code = Map.of("present", GOOD + "!", "code", "000");
    assertThat(admin.send("/settings/me", "/settings/me/codes", code).statusCode()).isEqualTo(422);
  }

  @Test
  @Order(11)
  void r_rec_05_a_backup_is_made_from_the_page() throws Exception {
    Map<String, String> nowhere = Map.of("folder", "relative", "hour", "3");
    assertThat(admin.send("/settings/backup", "/settings/backup", nowhere).statusCode())
        .isEqualTo(422);
    served.getBean(KeptPlans.class).add("Moss", "plan: Moss\n");
    String copies = folder.resolve("copies").toString();
    admin.send("/settings/backup", "/settings/backup", Map.of("folder", copies, "hour", "3"));
    assertThat(served.getBean(Backups.class).isDue()).isTrue();
    HttpResponse<String> made = admin.send("/settings/backup", "/settings/backup/now", Map.of());
    assertThat(made.statusCode()).as(made.body()).isEqualTo(302);
    assertThat(served.getBean(Backups.class).isDue()).isFalse();
    assertThat(Path.of(copies)).isDirectoryContaining("glob:**/firnline-*.zip");
    assertThat(admin.get("/settings/backup").body()).contains("firnline-");
  }

  @Test
  @Order(12)
  void a_laboratory_that_is_not_shared_is_not_opened_to_others(@TempDir Path alone) {
    assertThatThrownBy(
            () ->
                WebApplication.start(new DataFolder(alone), 0, Map.of("server.address", "0.0.0.0")))
        .rootCause()
        .hasMessageContaining("share the laboratory first");
  }
}
