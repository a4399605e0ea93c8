package org.firnline.app.api;

import java.util.Locale;
import org.firnline.app.planfile.AnsweredPlan;
import org.firnline.app.planfile.CheckWords;
import org.firnline.app.planfile.DesignJson;
import org.firnline.app.planfile.DesignedPlan;
import org.firnline.app.planfile.HazardWords;
import org.firnline.app.planfile.PlanJson;
import org.firnline.app.words.Words;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.node.ObjectNode;

/** {@code POST /api/v1/plan}: a plan file in, the answer of {@code firnline plan --json} out. */
@RestController
class PlanController {
  private static final String NAME = "plan";

  @PostMapping(
      path = "/api/v1/plan",
      consumes = {
        "application/yaml",
        "application/x-yaml",
        "text/yaml",
        MediaType.APPLICATION_JSON_VALUE
      })
  ResponseEntity<String> plan(@RequestBody String file) {
    AnsweredPlan plan = AnsweredPlan.of(NAME, file);
    if (plan.reading().input().isEmpty()) {
      ObjectNode problem = PlanJson.problems(plan.reading());
      problem.put("type", "about:blank");
      problem.put("title", "The plan cannot be used");
      problem.put("status", HttpStatus.UNPROCESSABLE_CONTENT.value());
      problem.put("detail", plan.reading().problems().get(0).sentence());
      return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
          .contentType(MediaType.APPLICATION_PROBLEM_JSON)
          .body(problem.toString());
    }
    Words words = Words.in(Locale.ENGLISH);
    ObjectNode json = new PlanJson(new CheckWords(words)).answer(plan);
    new DesignJson(new HazardWords(words)).add(json, DesignedPlan.of(plan.reading().input().get()));
    return ResponseEntity.ok().contentType(MediaType.APPLICATION_JSON).body(json.toString());
  }
}
