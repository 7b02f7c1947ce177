export type KeyKind = 'press' | 'repeat' | 'release';

/**
 * One event of one key. `name` is plain and in lower case (`b`, `f13`, `page-down`, `paste`); `text` is
 * what the key types, empty when it types nothing. Only terminals that report kinds send anything but
 * `press`; a release never carries text.
 */
export type Key = {
  readonly name: string;
  readonly text: string;
  readonly ctrl: boolean;
  readonly alt: boolean;
  readonly shift: boolean;
  readonly kind: KeyKind;
};

/**
 * When an event came, in milliseconds of a clock that does not jump. A program that is busy, or waits for a processor,
 * reads late: the event was there `at` this time, and came no sooner than `since`.
 */
export type Arrival = { readonly since: number; readonly at: number };

type KeyModifiers = Partial<Omit<Key, 'name'>>;

const unmodified = { text: '', ctrl: false, alt: false, shift: false, kind: 'press' } as const;

export const makeKey = (name: string, modifiers: KeyModifiers = {}): Key => ({
  name,
  ...unmodified,
  ...modifiers,
});

/**
 * The key behind a printable character, the same in every protocol: `B` is shift+b, while `?` is only
 * `?`, since no older terminal says which keys were held to type it.
 */
export function characterKey(character: string, modifiers: KeyModifiers = {}): Key {
  const lower = character.toLowerCase();
  const name = character === ' ' ? 'space' : lower;
  const types = !modifiers.ctrl && !modifiers.alt && modifiers.kind !== 'release';
  const shift = lower !== character || (!types && modifiers.shift === true && character !== ' ');
  return makeKey(name, { ...modifiers, shift, text: types ? character : '' });
}

/**
 * A stable plain name for settings and for showing what arrived: `b`, `shift+b`, `f13`, `page-down`,
 * `ctrl+alt+r`. Press, repeat and release of a key share it.
 */
export function keyId(key: Key): string {
  const held = [key.ctrl && 'ctrl', key.alt && 'alt', key.shift && 'shift'];
  return [...held.filter(Boolean), key.name].join('+');
}
