package org.griplore.store.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestInputStream;
import java.util.HexFormat;
import org.griplore.store.vocabulary.Refusal;

/**
 * The original files of an archive, each kept once under its hash: {@code originals/ab/abcd...}.
 */
public final class OriginalFiles {
  private final Path folder;

  OriginalFiles(Path archiveFolder) {
    this.folder = archiveFolder.resolve("originals");
  }

  /** Where the content with this hash is kept, whether it is there or not. */
  public Path path(String sha256) {
    return folder.resolve(sha256.substring(0, 2)).resolve(sha256);
  }

  /** Whether the kept content still has its hash. */
  public boolean intact(String sha256) {
    Path path = path(sha256);
    return Files.isRegularFile(path)
        && Original.of(path.toString(), sha256, () -> Files.newInputStream(path))
            .sha256()
            .equals(sha256);
  }

  /**
   * Keeps a content; nothing to do when it is there already.
   *
   * @return whether a new file was written
   * @throws Refusal when it changed since it was first read, or cannot be written
   */
  boolean keep(Original original) {
    Path target = path(original.sha256());
    if (Files.exists(target)) {
      return false;
    }
    Path partial = target.resolveSibling(original.sha256() + ".partial");
    try {
      Files.createDirectories(target.getParent());
      String hash = copy(original, partial);
      if (!hash.equals(original.sha256())) {
        throw new Refusal(
            original.name() + " changed while it was being read: add it again when it is at rest.");
      }
      Files.move(partial, target, StandardCopyOption.ATOMIC_MOVE);
      return true;
    } catch (IOException e) {
      throw new Refusal(
          "The original of "
              + original.name()
              + " cannot be kept in "
              + folder
              + ": the disk is full or the folder is read-only; nothing was added.",
          e);
    } finally {
      removeIfThere(partial);
    }
  }

  void remove(String sha256) {
    removeIfThere(path(sha256));
  }

  private static String copy(Original original, Path to) throws IOException {
    try (DigestInputStream in = new DigestInputStream(open(original), Original.newSha256());
        OutputStream out = Files.newOutputStream(to)) {
      in.transferTo(out);
      return HexFormat.of().formatHex(in.getMessageDigest().digest());
    }
  }

  private static InputStream open(Original original) throws IOException {
    return original.content().open();
  }

  private static void removeIfThere(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
