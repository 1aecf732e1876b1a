package org.slugpeak.cli.display;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
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
                KeyBinding.names(action.usualKeys()).forEach(key -> actions.put(key, action));
            }
        }
        return new KeyBindings(actions);
    }

    /** The same with other keys for one action; a key that meant something else is taken from it. */
    KeyBindings with(KeyBinding binding) {
        Map<String, KeyAction> changed = new LinkedHashMap<>(actions);
        changed.values().removeIf(binding.action()::equals);
        for (String key : binding.keys()) {
            changed.remove(key);
            changed.put(key, binding.action());
        }
        return new KeyBindings(changed);
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
