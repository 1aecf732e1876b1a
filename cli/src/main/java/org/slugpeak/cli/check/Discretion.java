package org.slugpeak.cli.check;

/**
 * Keeps out of a text that will be shown to others where the user's files are and what the user is called. Immutable; any thread may
 * use it.
 *
 * @param home the user's own folder, empty where none is known
 * @param user the name at sign-in, empty where none is known
 */
public record Discretion(String home, String user) {

    /** Below this length a name is likely part of other words, such as the {@code pi} in {@code pipe}. */
    private static final int SHORTEST_NAME = 3;

    /**
     * The text without them.
     *
     * @param text to be shown
     * @return with {@code ~} for the folder and {@code USER} for the name
     */
    public String of(String text) {
        String away = home.length() > 1 ? text.replace(home, "~") : text;
        return user.length() < SHORTEST_NAME ? away : away.replace(user, "USER");
    }
}
