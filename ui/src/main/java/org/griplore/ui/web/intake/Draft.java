package org.griplore.ui.web.intake;

import org.griplore.ingest.ReadOptions;

/**
 * A table or file on its way in: given to the page, looked at, corrected, and not in the archive
 * yet.
 *
 * @param id what its page is known by
 * @param name the name it would be kept under
 * @param content what was given
 * @param pasted whether it was pasted as text, and can be shown as such again
 * @param options what was said of it
 */
public record Draft(String id, String name, byte[] content, boolean pasted, ReadOptions options) {
  /** The same with something else said of it. */
  public Draft with(ReadOptions said) {
    return new Draft(id, name, content, pasted, said);
  }
}
