package org.firnline.app.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.firnline.app.store.audit.Changes;
import org.firnline.app.store.audit.Unaudited;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** No record is written past the audit. */
class WritesTest {
  private static final Path SOURCES = Path.of("src", "main", "java");
  private static final String THE_DOOR_ITSELF = "org.firnline.app.store.audit.Chain";
  private static final Pattern WRITING =
      Pattern.compile(
          "\\b(insert\\s+into|update\\s+[a-z_]+\\s+set|delete\\s+from)\\b",
          Pattern.CASE_INSENSITIVE);

  @Test
  void r_aud_05_everyUpdateStandsInsideACallOfTheDoor() {
    List<String> past =
        House.APP.stream()
            .filter(type -> !type.getName().startsWith(THE_DOOR_ITSELF))
            .flatMap(type -> type.getMethodCallsFromSelf().stream())
            .filter(WritesTest::writes)
            .filter(call -> !isAudited(call))
            .map(JavaMethodCall::getDescription)
            .toList();
    assertThat(past).as("writes that leave no entry in the audit").isEmpty();
  }

  @Test
  void r_aud_05_everyWritingStatementStandsInATypeThatUsesTheDoor() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      List<String> past =
          files
              .filter(file -> file.toString().endsWith(".java"))
              .filter(file -> !file.endsWith("Chain.java"))
              .filter(WritesTest::writesPastTheDoor)
              .map(Path::toString)
              .toList();
      assertThat(past)
          .as("files with SQL that writes and neither Changes nor @Unaudited")
          .isEmpty();
    }
  }

  private static boolean writes(JavaMethodCall call) {
    return call.getTargetOwner().isAssignableTo(JdbcClient.StatementSpec.class)
        && call.getName().equals("update");
  }

  private static boolean isAudited(JavaMethodCall call) {
    JavaClass type = call.getOriginOwner();
    if (type.isAnnotatedWith(Unaudited.class)) {
      return true;
    }
    JavaCodeUnit origin = call.getOrigin();
    return origin.isAnnotatedWith(Unaudited.class)
        || (call.isDeclaredInLambda() && entersTheDoor(origin));
  }

  private static boolean entersTheDoor(JavaCodeUnit unit) {
    return unit.getMethodCallsFromSelf().stream()
        .anyMatch(call -> call.getTargetOwner().isAssignableTo(Changes.class));
  }

  private static boolean writesPastTheDoor(Path file) {
    try {
      String source = Files.readString(file);
      String code = source.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("//[^\n]*", "");
      return WRITING.matcher(code).find()
          && !code.contains("changes.add(")
          && !code.contains("changes.change(")
          && !code.contains("@Unaudited(");
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
