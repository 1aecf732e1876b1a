package org.slugpeak.cli.display;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which key asks for what. Immutable; any thread may use it. */
public final class KeyBindings {

    private final Map<String, KeyAction> actions;

    private KeyBindings(Map<String, KeyAction> actions) {
        this.actions = actions;
    }

    /**
     * The usual keys.
     *
     * @return space marks, n goes on, and so on
     */
    public static KeyBindings usual() {
        Map<String, KeyAction> actions = new LinkedHashMap<>();
        for (KeyAction action : KeyAction.values()) {
            if (action.isBindable()) {
                keys(action.usualKeys()).forEach(key -> actions.put(key, action));
            }
        }
        return new KeyBindings(actions);
    }

    /**
     * The same with other keys for one action; a key that meant something else is taken from it.
     *
     * @param binding {@code ACTION=KEY} or {@code ACTION=KEY,KEY}, for example {@code next=f13,pagedown}
     * @return a copy
     * @throws IllegalArgumentException with a message for the user, if the action or a key is unknown
     */
    public KeyBindings with(String binding) {
        int equals = binding.indexOf('=');
        if (equals < 1 || equals == binding.length() - 1) {
            throw new IllegalArgumentException("'" + binding + "' is not ACTION=KEY, for example next=pagedown");
        }
        KeyAction action = KeyAction.ofWord(binding.substring(0, equals));
        Map<String, KeyAction> changed = new LinkedHashMap<>(actions);
        changed.values().removeIf(action::equals);
        for (String key : keys(binding.substring(equals + 1))) {
            changed.remove(key);
            changed.put(key, action);
        }
        return new KeyBindings(changed);
    }

    private static List<String> keys(String list) {
        List<String> keys = new ArrayList<>();
        for (String each : list.equals(",") ? new String[] {list} : list.split(",", -1)) {
            String key = each.toLowerCase(Locale.ROOT);
            if (!KeyDecoder.isKeyName(key)) {
                throw new IllegalArgumentException("no key is called '" + each
                        + "'; use a character, or space, enter, left, pagedown, f1 to f12 and the like");
            }
            keys.add(key);
        }
        return keys;
    }

    Optional<KeyAction> action(String key) {
        return Optional.ofNullable(actions.get(key));
    }

    /** What the keys do, one phrase an action, for the actions that are of use. */
    List<String> phrases(Set<KeyAction> useful) {
        List<String> phrases = new ArrayList<>();
        for (KeyAction action : KeyAction.values()) {
            if (useful.contains(action)) {
                firstKey(action).ifPresent(key -> phrases.add(key + " " + action.word()));
            }
        }
        return phrases;
    }

    private Optional<String> firstKey(KeyAction action) {
        return actions.entrySet().stream()
                .filter(binding -> binding.getValue() == action)
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
