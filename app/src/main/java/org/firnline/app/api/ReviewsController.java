package org.firnline.app.api;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.app.reading.ReviewJson;
import org.firnline.logs.LogReader;
import org.firnline.logs.Reading;
import org.firnline.review.Review;
import org.firnline.review.ReviewContext;
import org.firnline.review.Reviewer;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** {@code POST /api/v1/reviews}: a log in, the answer of {@code firnline review --json} out. */
@RestController
class ReviewsController {
  private static final int LARGEST_BYTES = 512_000_000;
  private static final double COLDEST_LIMIT_K = 150;
  private static final double WARMEST_LIMIT_K = 320;

  /**
   * Reviews a log; nothing is kept.
   *
   * @param name its file name, a hint to its form
   * @param limit_K the critical temperature, K; left out where it is not known
   */
  @PostMapping(
      path = "/api/v1/reviews",
      consumes = {"text/csv", "application/json", MediaType.APPLICATION_OCTET_STREAM_VALUE})
  ResponseEntity<String> review(
      HttpServletRequest request,
      @RequestParam(defaultValue = "log") String name,
      @RequestParam(name = "criticalTemperature_K", required = false) @Nullable Double limit_K)
      throws IOException {
    if (limit_K != null && !(limit_K > COLDEST_LIMIT_K && limit_K < WARMEST_LIMIT_K)) {
      return problem(
          HttpStatus.UNPROCESSABLE_CONTENT,
          "The critical temperature cannot be used",
          "criticalTemperature_K " + limit_K + " must lie between 150 and 320 K");
    }
    byte[] log = request.getInputStream().readNBytes(LARGEST_BYTES + 1);
    if (log.length > LARGEST_BYTES) {
      return problem(
          HttpStatus.CONTENT_TOO_LARGE, "The log is too large", "at most 512 MB are taken");
    }
    Reading reading = new LogReader().read(name, log);
    OptionalDouble limit = limit_K == null ? OptionalDouble.empty() : OptionalDouble.of(limit_K);
    Optional<Review> review =
        reading.log().map(read -> new Reviewer().review(read, new ReviewContext(limit, List.of())));
    if (review.isEmpty()) {
      ObjectNode answer = ReviewJson.of(reading, review);
      answer.put("type", "about:blank");
      answer.put("title", "The file cannot be read as a log");
      answer.put("status", HttpStatus.UNPROCESSABLE_CONTENT.value());
      answer.put("detail", reading.problems().get(0).sentence());
      return send(HttpStatus.UNPROCESSABLE_CONTENT, MediaType.APPLICATION_PROBLEM_JSON, answer);
    }
    return send(HttpStatus.OK, MediaType.APPLICATION_JSON, ReviewJson.of(reading, review));
  }

  private static ResponseEntity<String> problem(HttpStatus status, String title, String detail) {
    ObjectNode problem = JsonNodeFactory.instance.objectNode();
    problem.put("type", "about:blank").put("title", title);
    problem.put("status", status.value()).put("detail", detail);
    return send(status, MediaType.APPLICATION_PROBLEM_JSON, problem);
  }

  private static ResponseEntity<String> send(HttpStatus status, MediaType type, ObjectNode body) {
    return ResponseEntity.status(status).contentType(type).body(body.toString());
  }
}
