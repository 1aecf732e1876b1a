package org.slugpeak.cli.display;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

    private static List<String> phrases(KeyBindings bindings, KeyAction... useful) {
        return bindings.hints(EnumSet.copyOf(List.of(useful))).stream()
                .map(KeyHint::phrase)
                .toList();
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
            "'\u001b[[A',f1",
            "'\u001b[1;2P',f13",
            "'\u001b[25~',f13",
            "'\u001b[15;2~',f17",
            "'\u001b[34~',f20",
            "'\u001b[24;2~',f24",
            "'\u001b[<0;12;3M',mouse1",
            "'\u001b[<2;12;3M',mouse3",
            "'\u001b[<64;1;1M',mouse4",
            "'\u001b[<128;1;1M',mouse8",
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

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "\u001br",
                    "\u001b]11;rgb:0000/1111/2222\u0007",
                    "\u001bP1$r0m\u001b\\",
                    "\u001b[[Q",
                    "\u001b[<0;12;3m",
                    "\u001b[<35;12;3M"
                })
        void whatATerminalSaysByItselfIsNoKeyEither(String sent) {
            assertEquals(List.of(), decode(sent));
        }
    }

    @Nested
    class WhatAKeyAsksFor {

        @Test
        void isShownAsKeyAndWord() {
            assertEquals(
                    List.of("r next", "space mark", "q quit"),
                    phrases(KeyBindings.usual(), KeyAction.QUIT, KeyAction.NEXT, KeyAction.MARK));
        }

        @ParameterizedTest
        @CsvSource({
            "r,NEXT",
            "n,NEXT",
            "enter,GO",
            "f13,GO",
            "?,KEYS",
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
            "g,COUNTER",
            "q,QUIT"
        })
        void isTheUsualOne(String key, KeyAction action) {
            assertEquals(Optional.of(action), KeyBindings.usual().action(key));
        }

        @Test
        void canBeAPedalThatPosesAsAKey() throws Refused {
            KeyBindings bindings = KeyBindings.usual().with(List.of(KeyBinding.parse("next=f12,b")));
            assertEquals(Optional.of(KeyAction.NEXT), bindings.action("f12"));
            assertEquals(Optional.of(KeyAction.NEXT), bindings.action("b"));
            assertEquals(Optional.empty(), bindings.action("n"), "the usual key is given up");
            assertTrue(phrases(bindings, KeyAction.NEXT).contains("f12 next"));
        }

        @Test
        void isTakenFromAnotherAction() throws Refused {
            KeyBindings bindings = KeyBindings.usual().with(List.of(KeyBinding.parse("mark=q")));
            assertEquals(Optional.of(KeyAction.MARK), bindings.action("q"));
            assertEquals(List.of("q mark"), phrases(bindings, KeyAction.MARK, KeyAction.QUIT));
        }

        @Test
        void isRefusedWhereItWouldMeanTwoThings() throws Refused {
            List<KeyBinding> both = List.of(KeyBinding.parse("next=f13"), KeyBinding.parse("mark=f13,space"));
            Refused refused =
                    assertThrows(Refused.class, () -> KeyBindings.usual().with(both));
            assertEquals(
                    "the key f13 cannot mean both next and mark: choose another for one of them", refused.reason());
        }

        @Test
        void mayBeAButtonOfTheMouseWhichIsTakenOnlyThen() throws Refused {
            KeyBindings bindings = KeyBindings.usual().with(List.of(KeyBinding.parse("go=mouse1")));
            assertEquals(Optional.of(KeyAction.GO), bindings.action("mouse1"));
            assertTrue(bindings.useMouse());
            assertFalse(KeyBindings.usual().useMouse());
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
