package org.slugpeak.cli.display;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.core.word.Refused;

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

    /**
     * The same with other keys; a key that usually means something else is taken from it.
     *
     * @throws Refused where one key would have two meanings
     */
    KeyBindings with(List<KeyBinding> chosen) throws Refused {
        Map<String, KeyAction> meanings = new HashMap<>();
        KeyBindings result = this;
        for (KeyBinding binding : chosen) {
            for (String key : binding.keys()) {
                KeyAction other = meanings.put(key, binding.action());
                if (other != null && other != binding.action()) {
                    throw new Refused("the key " + key + " cannot mean both " + other.word() + " and "
                            + binding.action().word() + ": choose another for one of them");
                }
            }
            result = result.with(binding);
        }
        return result;
    }

    /** Whether any of them is a button of the mouse, which then belongs to the program. */
    boolean useMouse() {
        return actions.keySet().stream().anyMatch(KeyDecoder::isMouse);
    }

    private KeyBindings with(KeyBinding binding) {
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

    /** The keys of each action that is of use, in their order. */
    List<KeyHint> hints(Set<KeyAction> useful) {
        List<KeyHint> hints = new ArrayList<>();
        for (KeyAction action : KeyAction.values()) {
            List<String> keys = keys(action);
            if (useful.contains(action) && !keys.isEmpty()) {
                hints.add(new KeyHint(action, keys));
            }
        }
        return List.copyOf(hints);
    }

    private List<String> keys(KeyAction action) {
        return actions.entrySet().stream()
                .filter(binding -> binding.getValue() == action)
                .map(Map.Entry::getKey)
                .toList();
    }
}
