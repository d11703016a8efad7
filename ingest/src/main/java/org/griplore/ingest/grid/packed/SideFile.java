package org.griplore.ingest.grid.packed;

import java.util.List;
import java.util.Locale;

/**
 * Files that programs leave beside those that people keep: lock files, thumbnails, settings of a
 * folder, downloads that are not done. They hold nothing to read and are passed over.
 */
public final class SideFile {
  private static final List<String> NAMES =
      List.of("thumbs.db", "ehthumbs.db", "desktop.ini", "icon\r", "folder.jpg", "albumart.jpg");

  private static final List<String> BEGINNINGS = List.of("~$", ".~lock.", "._", "~wrl");
  private static final List<String> ENDINGS =
      List.of(".tmp", ".part", ".crdownload", ".lnk", ".url", ".swp", "~");

  private SideFile() {}

  /** Whether a file is one, by the last part of its path. */
  public static boolean is(String name) {
    String key = name.toLowerCase(Locale.ROOT);
    return key.startsWith(".")
        || NAMES.contains(key)
        || BEGINNINGS.stream().anyMatch(key::startsWith)
        || ENDINGS.stream().anyMatch(key::endsWith);
  }

  /** Whether any part of a path with slashes is one, or a folder that a program made. */
  static boolean isWithin(String path) {
    for (String part : path.split("/")) {
      boolean step = part.equals(".") || part.equals("..");
      if (part.equals("__MACOSX") || !step && is(part)) {
        return true;
      }
    }
    return false;
  }
}
