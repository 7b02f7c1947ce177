/** The questions as a table: how each reads its answer, how a maker names it, and the word of the trade behind it. */

import type { SwatchSoFar } from '../../planning/swatch-steps.ts';
import { fail, isGroup, type JsonGroup, jsonIn, type Result, succeed } from '../../shared/result.ts';
import type { Words } from '../../wording/words.ts';
import { isLength, readAmounts, type Unit } from './amounts.ts';
import {
  type AnswerFault,
  type Answers,
  type Given,
  type Length,
  type QuestionId,
  questionIds,
  readKept,
  unasked,
  type Values,
} from './answers.ts';
import { briefFileOf, usualValue } from './brief-of.ts';
import { readGuide } from './guided-swatch.ts';
import { readBed } from './read-bed.ts';
import { withoutHedges } from './read-line.ts';
import { readSize } from './read-size.ts';
import { readCords, readEdges, readSlant, readStripes } from './read-stripes.ts';
import { readSwatch } from './read-swatch.ts';
import { nameIn, readOtherYarns, readYarn } from './read-yarn.ts';
import { labelOf } from './say.ts';

interface AskedQuestion<Value> {
  /** Names besides its own by which `change` finds it. */
  readonly aliases: readonly string[];
  /** The word to explain when nothing else is named, as the glossary has it; null for a name, which is any. */
  readonly term: string | null;
  readonly read: (line: string, length: Length) => Result<Value, AnswerFault>;
}

export const questions: { readonly [Id in QuestionId]: AskedQuestion<Values[Id]> } = {
  name: { aliases: ['title'], term: null, read: readName },
  size: { aliases: ['bag', 'contents', 'girth'], term: 'girth', read: readSize },
  bed: { aliases: ['needles', 'pitch'], term: 'pitch', read: readBed },
  swatch: { aliases: ['gauge'], term: 'swatch', read: readSwatch },
  first: { aliases: ['yarn'], term: 'metres', read: readYarn },
  second: { aliases: ['yarns'], term: 'stripe', read: readOtherYarns },
  stripes: { aliases: ['stripe', 'rows'], term: 'stripe', read: readStripes },
  slant: { aliases: ['angle', 'shaping'], term: 'shaping-move', read: readSlant },
  cord: { aliases: ['cords', 'draws'], term: 'cord', read: readCords },
  edges: {
    aliases: ['edge', 'mouth', 'hem', 'saum', 'rand', 'prongs'],
    term: 'edge-stitches',
    read: readEdges,
  },
};

function readName(line: string): Result<string, AnswerFault> {
  const name = nameIn(line);
  return /^(?:why|how|warum|wieso|wie)\s/i.test(line)
    ? fail({ code: 'first-run/question-as-name', name })
    : succeed(name);
}

const readAnswer = <Id extends QuestionId>(
  id: Id,
  line: string,
  length: Length,
): Result<Values[Id], AnswerFault> => {
  const kept = readKept(id, line);
  return kept === null
    ? questions[id].read(id === 'name' ? line : withoutHedges(line), length)
    : succeed(kept);
};

/** All values: what was answered, and elsewhere what is usual. */
export function valuesOf(answers: Answers, words: Words): Values {
  const values: Partial<Record<QuestionId, unknown>> = {};
  for (const id of questionIds) {
    const given = answers[id];
    const answered = given && given.line !== '' ? readAnswer(id, given.line, given.length) : null;
    values[id] = answered?.ok
      ? answered.value
      : usualValue(id, values as Partial<Values>, given?.length ?? words.units.length, words);
  }
  return values as Values;
}

/** Those that are to be asked, in order: one yarn alone makes no stripes. */
export function askedOf(answers: Answers, words: Words): readonly QuestionId[] {
  const isOneYarn = valuesOf(answers, words).second.length === 0;
  return questionIds.filter((id) => {
    if (unasked.has(id)) return answers[id] !== undefined;
    return id !== 'stripes' || !isOneYarn;
  });
}

/** The answers with one more, or why it is none; an empty line takes what is usual. */
export function withAnswer(
  answers: Answers,
  id: QuestionId,
  given: Given,
  words: Words,
): Result<Answers, AnswerFault> {
  const value = given.line === '' ? null : readAnswer(id, given.line, given.length);
  if (value && !value.ok) return value;
  const after = answers[id] === given ? answers : { ...answers, [id]: given };
  const file = briefFileOf(valuesOf(after, words));
  return file.ok ? succeed(after) : file;
}

/** The question that a line begins with, by name or number, and what follows. A name may be two words. */
export function questionIn(
  line: string,
  asked: readonly QuestionId[],
  words: Words,
): { readonly id: QuestionId; readonly rest: string } | null {
  const typed = line.split(/\s+/);
  for (const length of [2, 1]) {
    const id = questionNamed(typed.slice(0, length).join(' ').toLowerCase(), asked, words);
    if (id) return { id, rest: typed.slice(length).join(' ') };
  }
  return null;
}

function questionNamed(name: string, asked: readonly QuestionId[], words: Words): QuestionId | null {
  const numbered = /^\d+$/.test(name) ? asked[Number(name) - 1] : undefined;
  const named = [...asked, ...unasked].find((id) =>
    [id, labelOf(id, words).toLowerCase(), ...questions[id].aliases].includes(name),
  );
  return numbered ?? named ?? null;
}

// Answers as they are kept on disk between one start and the next: those that are answers no longer are asked again.

/** With how far a swatch is that is being guided. */
export const draftOf = (answers: Answers, guide: SwatchSoFar | null = null): string =>
  `${JSON.stringify(guide ? { ...answers, guide } : answers, null, 2)}\n`;

export const readDraftGuide = (text: string): SwatchSoFar | null => readGuide(draftIn(text).guide);

/** Never fails: whatever is no answer is passed over. */
export function readDraft(text: string, words: Words): Answers {
  const stored = draftIn(text);
  let answers: Answers = {};
  for (const id of questionIds) {
    const given = stored[id];
    if (!isGiven(given)) continue;
    const after = withAnswer(answers, id, { line: given.line, length: given.length }, words);
    if (after.ok) answers = after.value;
  }
  return answers;
}

function draftIn(text: string): JsonGroup {
  const stored = jsonIn(text);
  return isGroup(stored) ? stored : {};
}

function isGiven(value: unknown): value is Given {
  const { line, length } = (value ?? {}) as Partial<Record<keyof Given, unknown>>;
  return typeof line === 'string' && (length === 'cm' || length === 'in');
}

// Several facts in one line go where they belong: `14 by 18 cm, 120 needles 6 mm, 40 stitches 60 rows 19.2 by 21.6`.

export interface AnswerPart {
  readonly id: QuestionId;
  readonly line: string;
}

/** Never so many that trying all ways to join them takes time. */
const mostParts = 12;

/**
 * The parts of a line that was typed at question `id`, the first of which answers it or belongs elsewhere; null where some part
 * belongs nowhere.
 */
export function partsOf(line: string, id: QuestionId, length: Length): readonly AnswerPart[] | null {
  const pieces = line.split(/\s*[,;]\s+/).filter((piece) => piece !== '');
  if (pieces.length > mostParts) return null;
  // A name ends where something begins that is no name; other answers are as long as can be.
  const counts = pieces.map((_, i) => i + 1);
  for (const count of id === 'name' ? counts : counts.toReversed()) {
    const head = pieces.slice(0, count).join(', ');
    const rest = places(pieces.slice(count), length, id);
    const own = readAnswer(id, head, length).ok ? id : placeOf(head, length, id);
    if (rest && own) return [{ id: own, line: head }, ...rest];
  }
  return null;
}

function places(pieces: readonly string[], length: Length, before: QuestionId): readonly AnswerPart[] | null {
  if (pieces.length === 0) return [];
  for (let count = pieces.length; count > 0; count--) {
    const line = pieces.slice(0, count).join(', ');
    const id = placeOf(line, length, before);
    const rest = id && places(pieces.slice(count), length, id);
    if (id && rest) return [{ id, line }, ...rest];
  }
  return null;
}

/** The question that a text answers by what is in it alone; a yarn is told by its colour, length or weight. */
function placeOf(line: string, length: Length, before: QuestionId): QuestionId | null {
  const { amounts } = readAmounts(line);
  const has = (...units: readonly Unit[]): boolean =>
    units.every((unit) => amounts.some((one) => one.unit === unit));
  const yarn: QuestionId = before === 'first' ? 'second' : 'first';
  const told: readonly (readonly [QuestionId, boolean])[] = [
    ['bed', has('needles')],
    ['swatch', has('stitches', 'rows')],
    ['size', amounts.some(({ unit }) => isLength(unit)) && !has('stitches') && !has('rows')],
    ['stripes', has('rows')],
    [yarn, /#|\d\s*(?:g|oz)(?!\p{L})/iu.test(line)],
  ];
  return told.find(([id, isTold]) => isTold && readAnswer(id, line, length).ok)?.[0] ?? null;
}
