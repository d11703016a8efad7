package org.griplore.ui;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;

/** Leaves out the scenario and the benches that come in other modules' test jars. */
final class NoTestJars implements ImportOption {
  @Override
  public boolean includes(Location location) {
    return !location.contains("-tests.jar") && !location.contains("/test-classes/");
  }
}
