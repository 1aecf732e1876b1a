package org.slugpeak.bridge.disk;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * The one way to write a file that must be whole: it is written beside its place, forced to the disk and only then put there, so
 * that a full disk, a kill or a power cut leaves what was there before. A draft that was not put in its place is deleted by
 * {@link #close}. One thread at a time.
 */
public final class Draft implements Closeable {

    /** So many drafts may lie beside a file that were left by a power cut. */
    private static final int MOST_LEFT_BEHIND = 100;

    private final Path place;
    private final Path beside;
    private final FileOutputStream file;
    private final OutputStream out;

    private Draft(Path place, Path beside) throws IOException {
        this.place = place;
        this.beside = beside;
        this.file = new FileOutputStream(beside.toFile());
        this.out = new BufferedOutputStream(file);
    }

    /**
     * Begins to write.
     *
     * @param place where the file is to be; a link leads to the file that it names
     * @return a draft, empty
     * @throws IOException if nothing can be made in its folder, or its name is none here
     */
    public static Draft of(Path place) throws IOException {
        NewFiles.refuseDevices(place);
        Path real = Files.exists(place) ? place.toRealPath() : place;
        for (int i = 0; ; i++) {
            Path beside = Folders.of(real).resolve("." + real.getFileName() + "." + i + ".draft");
            try {
                return new Draft(real, Files.createFile(beside));
            } catch (FileAlreadyExistsException e) {
                if (i == MOST_LEFT_BEHIND) {
                    throw e;
                }
            }
        }
    }

    /**
     * Where to write; buffered.
     *
     * @return closed with this
     */
    public OutputStream out() {
        return out;
    }

    /**
     * Puts the draft in the place of the file that is there, if there is one.
     *
     * @throws IOException where that failed; the old file is as it was
     */
    public void replace() throws IOException {
        finish();
        Files.move(beside, place, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        Folders.keepNameOf(place);
    }

    /**
     * Puts the draft where nothing is yet.
     *
     * @throws FileAlreadyExistsException if something is there; it is as it was
     * @throws IOException where that failed
     */
    public void create() throws IOException {
        finish();
        try {
            Files.createLink(place, beside);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (FileSystemException | UnsupportedOperationException e) {
            Files.move(beside, place); // a file system without hard links
        }
        Folders.keepNameOf(place);
    }

    @Override
    public void close() throws IOException {
        file.close();
        Files.deleteIfExists(beside);
    }

    private void finish() throws IOException {
        out.flush();
        file.getFD().sync();
        file.close();
    }
}
