package org.griplore.store.archive;

import java.nio.file.Path;

/** Opens an archive, which carries it over, after it has said that it begins; a test kills it. */
public final class MigratingProcess {
  private MigratingProcess() {}

  /** Argument: the archive's folder. */
  public static void main(String[] arguments) {
    System.out.print('b');
    System.out.flush();
    Archive.open(Path.of(arguments[0])).close();
  }
}
