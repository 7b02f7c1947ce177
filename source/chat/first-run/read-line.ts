/**
 * A line typed while the questions are asked: a few words steer them, all else is an answer, whose number may have words around it
 * that make it less sure, or which says that nobody knows.
 */

export type InterviewWish =
  | { readonly kind: 'answer'; readonly line: string }
  /** Goes to the answer that the text begins with; what follows answers it at once. */
  | { readonly kind: 'change'; readonly text: string }
  /** Explains a word of the trade: the one that the question is about where the text is empty, all where it is null. */
  | { readonly kind: 'explain'; readonly about: string | null }
  | { readonly kind: 'units'; readonly word: string }
  | { readonly kind: 'save'; readonly out: string }
  | { readonly kind: Alone };

type Alone = 'back' | 'answers' | 'help' | 'practice' | 'cancel' | 'quit';

/** Words that steer the questions where they stand alone. */
export const aloneWords: ReadonlyMap<string, Alone> = new Map([
  ['back', 'back'],
  ['undo', 'back'],
  ['zurück', 'back'],
  ['answers', 'answers'],
  ['change', 'answers'],
  ['help', 'help'],
  ['hilfe', 'help'],
  // What is asked for is being done.
  ['new', 'help'],
  ['practice', 'practice'],
  ['practise', 'practice'],
  ['cancel', 'cancel'],
  ['abbrechen', 'cancel'],
  ['quit', 'quit'],
  ['exit', 'quit'],
]);

/** Words that Tab completes. */
export const steeringWords: readonly string[] = [
  'answers',
  'back',
  'cancel',
  'change',
  'help',
  'practice',
  'quit',
  'units',
  'words',
];

const question =
  /^(?:what|was)(?:'s| is| are| does| ist| sind| heißt| bedeutet)?\b.*\?$|^what(?:'s| is| are| does)\b/i;

export function readInterviewLine(typed: string): InterviewWish {
  const line = typed.trim().replace(/^\//, '').trim();
  const kind = aloneWords.get(line.toLowerCase());
  if (kind) return { kind };
  const [, first = '', rest = ''] = /^(\S+)\s*(.*)$/u.exec(line) ?? [];
  if (first === '?' || (first.startsWith('?') && rest === ''))
    return { kind: 'explain', about: line.slice(1).trim() };
  if (question.test(line)) return { kind: 'explain', about: line };
  switch (first.toLowerCase()) {
    case 'change':
      return { kind: 'change', text: rest };
    case 'words':
      return { kind: 'explain', about: rest === '' ? null : rest };
    case 'units':
      return { kind: 'units', word: rest };
    case 'save':
      return rest === '' ? { kind: 'answer', line } : { kind: 'save', out: rest };
    default:
      return { kind: 'answer', line };
  }
}

const hedges =
  /(?<!\p{L})(?:about|roughly|approximately|approx\.?|circa|ca\.?|maybe|some|ungefähr|etwa|zirka|vielleicht)\s*(?=[\d~≈½¼¾])/giu;

/** Only where a part of the line begins: behind a number they are the girth. */
const rounds = /(^|[,;]|(?<!\p{L})(?:by|x|and|mal|und)(?!\p{L}))\s*(?:around|rund)\s*(?=[\d~≈½¼¾])/giu;

const trailing = /\s*(?:or so|oder so|more or less|mehr oder weniger)\s*$/iu;

/** The line with its numbers as if they were sure. */
export const withoutHedges = (line: string): string =>
  line
    .replace(hedges, ' ')
    .replace(rounds, '$1 ')
    .replace(/[~≈]\s*(?=[\d½¼¾])/g, '')
    .replace(trailing, '')
    .trim();

const unsure =
  /^(?:(?:i )?(?:dunno|don'?t know|do not know)(?: yet)?|no idea|not sure|skip|unknown|any|whatever|usual|wei(?:ß|ss) (?:ich )?nicht|ich wei(?:ß|ss) (?:es )?nicht|keine ahnung|egal|überspringen|üblich)[.!]?$/iu;

/** Takes what is usual, as an empty line does. */
export const isUnsure = (line: string): boolean => unsure.test(line.trim());
