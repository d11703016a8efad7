package org.griplore.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A word means one thing in the whole project. */
class OneWordAThingTest {
  @Test
  void noSimpleNameOfAClassStandsTwice() {
    Map<String, List<String>> byName =
        new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .withImportOption(new NoTestJars())
                .importPackages("org.griplore")
                .stream()
                .filter(JavaClass::isTopLevelClass)
                .filter(type -> !type.getSimpleName().equals("package-info"))
                .filter(type -> !type.getName().contains(".jte"))
                .collect(
                    Collectors.groupingBy(
                        JavaClass::getSimpleName,
                        TreeMap::new,
                        Collectors.mapping(JavaClass::getName, Collectors.toList())));
    byName.values().removeIf(names -> names.size() == 1);
    assertThat(byName).isEmpty();
  }
}
