package org.firnline.app.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.firnline.app.store.OpenStore;
import org.firnline.app.store.keeping.Verdict;
import org.firnline.app.store.keeping.Verification;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** {@code firnline verify}: is every record as it was written? */
@Command(
    name = "verify",
    mixinStandardHelpOptions = true,
    description = {
      "Follows the audit from its first entry and holds every record, raw file and series",
      "against it; names the first that was altered. Changes nothing."
    })
final class VerifyCommand implements Callable<Integer> {
  private static final int MOST_NAMED = 20;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private LaboratoryOption laboratory = new LaboratoryOption();

  @Option(names = "--json", description = "Answer in JSON.")
  private boolean json;

  VerifyCommand() {}

  @Override
  public Integer call() {
    Verdict verdict;
    try (OpenStore store = laboratory.open()) {
      verdict = Verification.of(store);
    }
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(JsonText.of(json(verdict)));
    } else {
      say(verdict, out);
    }
    out.flush();
    return verdict.isUnaltered() ? FirnlineCommand.FINE : FirnlineCommand.STOP_LINE;
  }

  private static void say(Verdict verdict, PrintWriter out) {
    verdict.first().ifPresent(first -> out.println("ALTERED. First: " + first));
    verdict.problems().stream()
        .skip(1)
        .limit(MOST_NAMED)
        .forEach(problem -> out.println("         Also: " + problem));
    if (verdict.isUnaltered()) {
      out.println("Unaltered: every record is as the audit says.");
    }
    out.printf(
        "Read: %d entries of the audit, %d tables, %d raw files, %d series.%n",
        verdict.entries(), verdict.rows(), verdict.files(), verdict.series());
    out.println("Hash of the last entry: " + verdict.lastHash());
  }

  private static ObjectNode json(Verdict verdict) {
    ObjectNode answer = JsonNodeFactory.instance.objectNode();
    answer.put("unaltered", verdict.isUnaltered()).put("entries", verdict.entries());
    answer.put("tables", verdict.rows()).put("files", verdict.files());
    answer.put("series", verdict.series()).put("lastHash", verdict.lastHash());
    verdict.problems().forEach(answer.putArray("problems")::add);
    return answer;
  }
}
