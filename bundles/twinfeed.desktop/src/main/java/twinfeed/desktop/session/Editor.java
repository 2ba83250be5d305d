// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

/** A part of the window in which a file is changed: the keys for saving and undoing act on the one that is looked at. */
public interface Editor {
    /** Takes what was typed and is not taken yet; the answer is whether all of it could be. */
    boolean commit();

    /** Saves; the answer is whether that was done. What keeps it from being done is said. */
    boolean save();

    /** Takes back what was typed last, or else the last edit. */
    void undo();

    /** Whether an edit was taken back that can be made again. */
    boolean canRedo();

    /** Makes the edit that was taken back again. */
    void redo();
}
