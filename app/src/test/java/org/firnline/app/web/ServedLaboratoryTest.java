package org.firnline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.HttpURLConnection;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import org.firnline.app.demo.HarrowFenCollection;
import org.firnline.app.store.DataFolder;
import org.firnline.app.store.KeptPlans;
import org.firnline.app.store.RawFile;
import org.firnline.app.store.RawFiles;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;

/** The running program as another program on the same machine or network would meet it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ServedLaboratoryTest {

  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private Path folder;
  private ConfigurableApplicationContext served;
  private URI home;

  @BeforeAll
  void serve(@TempDir Path given) {
    folder = given;
    served = WebApplication.start(new DataFolder(folder), 0);
    served.getBean(HarrowFenCollection.class).fill();
    home = URI.create(WebApplication.address(served));
  }

  @AfterAll
  void stop() {
    served.close();
  }

  private HttpResponse<String> get(String path) throws IOException, InterruptedException {
    HttpRequest request = HttpRequest.newBuilder(home.resolve(path)).build();
    return CLIENT.send(request, HttpResponse.BodyHandlers.ofString());
  }

  /** A request with a header that ordinary clients do not let one write. */
  private String statusLine(String host) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", home.getPort())) {
      String request = "GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return answer.lines().findFirst().orElseThrow();
    }
  }

  @Nested
  class Doors {

    @Test
    void answersOnTheLoopbackAddressOnly() throws IOException {
      for (NetworkInterface card :
          NetworkInterface.networkInterfaces().filter(c -> !isLoopback(c)).toList()) {
        for (InetAddress address : card.inetAddresses().toList()) {
          assertThat(isOpen(address)).as("port open on %s", address).isFalse();
        }
      }
      assertThat(isOpen(InetAddress.getLoopbackAddress())).isTrue();
    }

    @Test
    void refusesAForeignHostName() throws IOException {
      assertThat(statusLine("lab.example:" + home.getPort())).contains("400");
      assertThat(statusLine("localhost:" + home.getPort())).contains("200");
    }

    @Test
    void refusesAChangeWithoutItsToken() throws IOException, InterruptedException {
      HttpRequest request =
          HttpRequest.newBuilder(home.resolve("/plan"))
              .header("Content-Type", "application/x-www-form-urlencoded")
              .POST(HttpRequest.BodyPublishers.ofString("plan=forged"))
              .build();
      assertThat(CLIENT.send(request, HttpResponse.BodyHandlers.ofString()).statusCode())
          .isEqualTo(HttpURLConnection.HTTP_FORBIDDEN);
    }

    private boolean isLoopback(NetworkInterface card) {
      try {
        return card.isLoopback();
      } catch (IOException e) {
        throw new java.io.UncheckedIOException(e);
      }
    }

    private boolean isOpen(InetAddress address) {
      try (Socket socket = new Socket()) {
        socket.connect(new java.net.InetSocketAddress(address, home.getPort()), 500);
        return true;
      } catch (IOException e) {
        return false;
      }
    }
  }

  @Nested
  class Pages {

    private static final List<String> PATHS =
        List.of(
            "/", "/plan", "/ask", "/ask/pressure", "/ask/failure?vessel=vial", "/runs", "/runs/1");

    @Test
    void allowNoScriptOrStyleOfTheirOwn() throws IOException, InterruptedException {
      for (String path : PATHS) {
        HttpResponse<String> page = get(path);
        String policy = page.headers().firstValue("Content-Security-Policy").orElse("");
        assertThat(policy).contains("default-src 'self'").doesNotContain("unsafe");
        assertThat(page.body())
            .doesNotContainPattern("<script(?![^>]*\\bsrc=)[^>]*>[^<]*\\S")
            .doesNotContainPattern("\\son[a-z]+=\"")
            .doesNotContain(" style=\"");
        assertThat(page.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
      }
    }

    @Test
    void showAHostileTitleAsText() throws IOException, InterruptedException {
      long id =
          served
              .getBean(KeptPlans.class)
              .add("<script>alert(1)</script>", "plan: '<script>alert(1)</script>'\n");
      assertThat(get("/plan/" + id).body()).doesNotContain("<script>alert(1)");
      assertThat(get("/plan/" + id).body()).contains("&lt;script&gt;");
    }

    @Test
    void sayInWordsThatAPageIsNotThere() throws IOException, InterruptedException {
      HttpResponse<String> page = get("/runs/999999");
      assertThat(page.statusCode()).isEqualTo(HttpURLConnection.HTTP_NOT_FOUND);
      assertThat(page.body()).doesNotContain("Exception", "Whitelabel");
    }
  }

  @Nested
  class RawLogs {

    @Test
    void areKeptByteForByteWithTheirHash() throws Exception {
      byte[] bytes = {0, 1, 2, (byte) 0xff, '\r', '\n', 0};
      RawFile kept =
          served.getBean(RawFiles.class).keep(new ByteArrayInputStream(bytes), "../../evil.csv");
      String hash = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
      assertThat(kept.sha256()).isEqualTo(hash);
      assertThat(kept.size_bytes()).isEqualTo(bytes.length);
      try (InputStream stored = served.getBean(RawFiles.class).open(kept)) {
        assertThat(stored.readAllBytes()).isEqualTo(bytes);
      }
      assertThat(folder.getParent().resolve("evil.csv")).doesNotExist();
    }

    @Test
    void comeBackWithTheHashThatTheirPageShows() throws Exception {
      HttpRequest request = HttpRequest.newBuilder(home.resolve("/runs/1/log")).build();
      byte[] body = CLIENT.send(request, HttpResponse.BodyHandlers.ofByteArray()).body();
      String hash = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(body));
      assertThat(get("/runs/1").body()).contains(hash);
    }
  }
}
