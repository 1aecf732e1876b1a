package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.core.word.Refused;

class KeysTest {

    private static List<String> decode(String sent) {
        KeyDecoder decoder = new KeyDecoder();
        List<String> keys = new ArrayList<>();
        sent.chars().forEach(character -> decoder.accept((char) character).ifPresent(keys::add));
        decoder.pause().ifPresent(keys::add);
        return keys;
    }

    @Nested
    class WhatATerminalSends {

        @ParameterizedTest
        @CsvSource({
            "'a',a",
            "'Q',q",
            "' ',space",
            "'\r',enter",
            "'\n',enter",
            "'\t',tab",
            "'\u007f',backspace",
            "'\u001b[A',up",
            "'\u001bOB',down",
            "'\u001b[C',right",
            "'\u001b[D',left",
            "'\u001b[5~',pageup",
            "'\u001b[6~',pagedown",
            "'\u001bOP',f1",
            "'\u001b[15~',f5",
            "'\u001b[24~',f12",
            "'\u001b',escape"
        })
        void isAKeyWithAName(String sent, String name) {
            assertEquals(List.of(name), decode(sent));
        }

        @Test
        void mayComeInOneGo() {
            assertEquals(List.of("n", "up", "space", "pagedown", "q"), decode("n\u001b[A \u001b[6~q"));
        }

        @Test
        void mayBeNonsenseAndThenStillNoKeyIsStuck() {
            SplittableRandom random = new SplittableRandom(8);
            for (int i = 0; i < 2000; i++) {
                KeyDecoder decoder = new KeyDecoder();
                for (int k = random.nextInt(20); k > 0; k--) {
                    decoder.accept((char) random.nextInt(0, 200));
                }
                decoder.pause();
                assertEquals(Optional.of("q"), decoder.accept('q'));
            }
        }

        @Test
        void anUnknownSequenceIsNoKey() {
            assertEquals(List.of(), decode("\u001b[1;5A\u001b[200~"));
        }
    }

    @Nested
    class WhatAKeyAsksFor {

        @Test
        void isShownAsKeyAndWord() {
            assertEquals(
                    List.of("r next", "space mark", "q quit"),
                    KeyBindings.usual().phrases(EnumSet.of(KeyAction.QUIT, KeyAction.NEXT, KeyAction.MARK)));
        }

        @ParameterizedTest
        @CsvSource({
            "r,NEXT",
            "n,NEXT",
            "enter,NEXT",
            "pagedown,NEXT",
            "b,AGAIN",
            "pageup,AGAIN",
            "p,PREVIOUS",
            "space,MARK",
            "k,SKIP",
            "0,REST",
            "x,LEVEL",
            "h,CUT",
            "c,CHECK",
            "d,DONE",
            "escape,DROP",
            "f,REPAIRED",
            "q,QUIT"
        })
        void isTheUsualOne(String key, KeyAction action) {
            assertEquals(Optional.of(action), KeyBindings.usual().action(key));
        }

        @Test
        void canBeAPedalThatPosesAsAKey() throws Refused {
            KeyBindings bindings = KeyBindings.usual().with(KeyBinding.parse("next=f12,b"));
            assertEquals(Optional.of(KeyAction.NEXT), bindings.action("f12"));
            assertEquals(Optional.of(KeyAction.NEXT), bindings.action("b"));
            assertEquals(Optional.empty(), bindings.action("n"), "the usual key is given up");
            assertTrue(bindings.phrases(EnumSet.of(KeyAction.NEXT)).contains("f12 next"));
        }

        @Test
        void isTakenFromAnotherAction() throws Refused {
            KeyBindings bindings = KeyBindings.usual().with(KeyBinding.parse("mark=q"));
            assertEquals(Optional.of(KeyAction.MARK), bindings.action("q"));
            assertEquals(List.of("q mark"), bindings.phrases(EnumSet.of(KeyAction.MARK, KeyAction.QUIT)));
        }

        @ParameterizedTest
        @ValueSource(strings = {"next", "next=", "=n", "jump=n", "next=nokey", "interrupt=x", "hang-up=x", "next=n,,m"})
        void isRefusedWithAMessageThatNamesIt(String binding) {
            Refused refused = assertThrows(Refused.class, () -> KeyBinding.parse(binding));
            assertTrue(refused.reason().contains("'"), refused.reason());
        }

        @Test
        void everyUsualKeyIsAKeyThatATerminalCanSend() {
            for (KeyAction action : KeyAction.values()) {
                if (action.isBindable()) {
                    for (String key : action.usualKeys().split(",", -1)) {
                        assertTrue(KeyDecoder.isKeyName(key), key);
                        assertEquals(Optional.of(action), KeyBindings.usual().action(key), key);
                    }
                }
            }
        }
    }
}
