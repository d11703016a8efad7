package org.griplore.ingest.grid.packed;

import java.io.FilterInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.griplore.ingest.grid.Content;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Files packed together: each is a source of its own. Nothing is unpacked onto the disk, so that a
 * name in it leads nowhere.
 */
public final class PackedFolder {
  private PackedFolder() {}

  /**
   * The files in a packed file, in the order of its directory.
   *
   * @throws Refusal when it holds none, or a part has a password or is damaged
   */
  public static Content members(Original original, PackedFile file) throws IOException {
    List<Original> members = new ArrayList<>();
    List<String> passedOver = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (String part : file.parts()) {
      ZipArchiveEntry entry = file.entry(part);
      String path = entry.getName().replace('\\', '/');
      if (entry.isDirectory() || path.endsWith("/")) {
        continue;
      }
      if (SideFile.isWithin(path) || entry.isUnixSymlink()) {
        passedOver.add(path);
      } else if (entry.getGeneralPurposeBit().usesEncryption()) {
        throw new Refusal(
            original.name() + " is a packed file with a password: pack it without one.",
            new Problem(original.name() + ", " + path, "a password", "a file without one"));
      } else {
        members.add(member(original, path));
      }
    }
    if (members.isEmpty()) {
      throw new Refusal(
          original.name() + " is a packed file in which there is nothing to read.",
          new Problem(original.name(), "no files", "files of tables or notes"));
    }
    return new Content.Members("packed folder", members, passedOver, findings);
  }

  /** A member is unpacked anew each time it is opened, and what it unpacks to is counted. */
  private static Original member(Original whole, String path) {
    String name = path.substring(path.lastIndexOf('/') + 1);
    Original.Content content =
        () -> {
          PackedFile file = PackedFile.open(whole.name(), whole.readAll());
          return new FilterInputStream(file.open(path)) {
            @Override
            public void close() throws IOException {
              super.close();
              file.close();
            }
          };
        };
    return Original.of(whole.origin() + "!" + path, name, content);
  }
}
