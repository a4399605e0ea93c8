package org.firnline.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethodCall;

/** Picks method calls by regular expressions, where listing every overload would hide the rule. */
final class Calls {
  private Calls() {}

  static DescribedPredicate<JavaMethodCall> named(String owner, String method) {
    DescribedPredicate<JavaClass> meant = describe(owner, type -> type.getName().matches(owner));
    return describe(
        owner + "." + method,
        call -> call.getName().matches(method) && call.getTargetOwner().isAssignableTo(meant));
  }

  static DescribedPredicate<JavaMethodCall> withoutArguments(String owner, String method) {
    return named(owner, method).and(taking(0)).as(owner + "." + method + "()");
  }

  static DescribedPredicate<JavaMethodCall> taking(int arguments) {
    return describe(
        "taking " + arguments, call -> call.getTarget().getRawParameterTypes().size() == arguments);
  }
}
