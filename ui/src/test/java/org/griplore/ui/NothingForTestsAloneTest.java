package org.griplore.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Main code is what the program reaches from its start; what only tests use stands with them. */
class NothingForTestsAloneTest {
  @Test
  void everyClassIsReachedFromTheProgramsStart() {
    JavaClasses all =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .withImportOption(new NoTestJars())
            .importPackages("org.griplore");
    Set<JavaClass> reached = new HashSet<>();
    Deque<JavaClass> open = new ArrayDeque<>();
    open.add(all.get(Griplore.class));
    // templates are found by name
    all.stream().filter(type -> type.getPackageName().endsWith(".pages")).forEach(open::add);
    while (!open.isEmpty()) {
      JavaClass next = open.pop();
      if (!reached.add(next)) {
        continue;
      }
      for (Dependency dependency : next.getDirectDependenciesFromSelf()) {
        JavaClass target = dependency.getTargetClass().getBaseComponentType();
        if (all.contain(target.getName())) {
          open.push(all.get(target.getName()));
        }
      }
      all.stream()
          .filter(type -> type.getEnclosingClass().filter(next::equals).isPresent())
          .forEach(open::push);
    }
    Set<String> left = new TreeSet<>();
    for (JavaClass type : all) {
      if (!reached.contains(type) && type.isTopLevelClass() && !isConstantsOnly(type)) {
        left.add(type.getName());
      }
    }
    assertThat(left).isEmpty();
  }

  /** The compiler copies constants to where they are used: no class file shows that they are. */
  private static boolean isConstantsOnly(JavaClass type) {
    return type.getMethods().isEmpty();
  }
}
