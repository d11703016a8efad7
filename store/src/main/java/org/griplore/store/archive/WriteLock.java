package org.griplore.store.archive;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import org.griplore.store.vocabulary.Busy;
import org.griplore.store.vocabulary.Refusal;

/** The lock that one writer at a time holds, across threads and programs. */
final class WriteLock implements AutoCloseable {
  private final FileChannel channel;

  private WriteLock(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Takes the lock.
   *
   * @param done what did not happen when it is refused: "nothing was added"
   * @throws Busy when somebody else holds it
   * @throws Refusal when the folder cannot be written
   */
  static WriteLock take(Archive archive, String done) {
    FileChannel channel = null;
    try {
      channel = archive.lockFile();
      if (channel.tryLock() != null) {
        return new WriteLock(channel);
      }
      channel.close();
    } catch (OverlappingFileLockException e) {
      closeQuietly(channel, e);
    } catch (IOException e) {
      throw new Refusal(
          "The archive in " + archive.folder() + " cannot be written: " + e.getMessage() + ".", e);
    }
    throw new Busy(
        "Somebody else is adding to the archive in "
            + archive.folder()
            + " right now: try again when they have finished; "
            + done
            + ".");
  }

  private static void closeQuietly(FileChannel channel, Exception because) {
    try {
      channel.close();
    } catch (IOException e) {
      because.addSuppressed(e);
    }
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException e) {
      throw new Refusal("The archive's lock could not be released: " + e.getMessage() + ".", e);
    }
  }
}
