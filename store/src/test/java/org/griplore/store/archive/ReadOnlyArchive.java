package org.griplore.store.archive;

import java.nio.file.Path;

/** Opens an archive as in a folder that cannot be written, for tests that may run as root. */
public final class ReadOnlyArchive {
  private ReadOnlyArchive() {}

  /** The archive in a folder, read-only whatever the folder's permissions are. */
  public static Archive open(Path folder) {
    return Archive.opened(folder, false);
  }
}
