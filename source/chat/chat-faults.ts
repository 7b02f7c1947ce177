import type { SeenFault } from '../session/locate/seen.ts';
import { isOf } from '../shared/result.ts';
import type { LandmarkFault } from '../steps/landmarks.ts';
import { type SayingsBy, sayBy } from '../wording/by-kind.ts';
import { formatFault } from '../wording/faults.ts';
import { seenFaults } from '../wording/finding.ts';
import { sayWhichUnit } from '../wording/replan.ts';
import type { Words } from '../wording/words.ts';
import type { ChatFault } from './grammar/intent.ts';
import type { ReplyFault } from './reply.ts';

/** Why a typed line could not be carried out, and what to type instead. */
export const formatChatFault = (fault: ReplyFault, words: Words): string =>
  isOf(fault, 'rip-back') || isOf(fault, 'replan') || isOf(fault, 'way')
    ? formatFault(fault, words)
    : sayBy('code', sayings, fault, words);

const sayings: SayingsBy<'code', ChatFault | LandmarkFault | SeenFault, [words: Words]> = {
  ...seenFaults,
  'chat/unknown-command': ({ nearest, word }, words) =>
    nearest ? words.prompt.unknownCommand(word, nearest) : words.prompt.noCommand(word),
  'chat/meant': ({ line }, words) => words.wishes.typeThis(line),
  'chat/ambiguous': ({ word, choices }, words) => words.prompt.ambiguous(word, choices),
  'chat/not-a-count': ({ word, usage }, words) =>
    word === null ? words.prompt.needsMore(usage) : words.prompt.notACount(word, usage),
  'chat/not-a-choice': ({ word, choices }, words) => notAChoice(word, choices, words),
  'chat/not-a-side': ({ word }, words) => notAChoice(word, words.prompt.sides, words),
  'chat/not-in-range': ({ word, least, most }, words) => words.prompt.notInRange(word, least, most),
  'chat/needs-more': ({ usage }, words) => words.prompt.needsMore(usage),
  'chat/unknown-place': ({ word, usage, verb }, words) => words.prompt.unknownPlace(word, usage, verb),
  'chat/not-so-many-rows': ({ knitted }, words) => words.prompt.notSoManyRows(knitted),
  'chat/no-such-mark': ({ known, name }, words) =>
    known.length > 0 ? words.prompt.noSuchMark(name, known) : words.prompt.noMarks,
  'steps/no-such-place': ({ what, number, most }, words) => words.prompt.noSuchPlace(what, number, most),
  'steps/no-such-phase': ({ phase }, words) => words.prompt.noSuchPhase(words.prompt.phases[phase]),
  'chat/left-of-what': ({ word }, words) => words.prompt.leftOfWhat(word, word === 'left' ? 'L24' : 'R21'),
  'chat/which-edge': ({ needle }, words) => words.prompt.whichEdge(needle),
  'chat/too-many-needles': ({ needles }, words) => words.prompt.tooManyNeedles(needles),
  'chat/count-of-what': ({ word }, words) => words.prompt.countOfWhat(word),
  'chat/which-unit': (fault, words) => sayWhichUnit(fault, words),
  'chat/not-a-measurement': ({ word, usage }, words) => words.prompt.notAMeasurement(word, usage),
  'chat/not-a-length': ({ text, usage }, words) => words.measured.cord.notALength(text, usage),
  'chat/not-a-weighing': ({ text, usage }, words) => words.prompt.notAWeighing(text, usage),
  'chat/not-two-sizes': ({ text, usage }, words) => words.prompt.notTwoSizes(text, usage),
  'chat/nothing-found-before': (_, words) => words.prompt.nothingFoundBefore,
  'chat/nothing-offered': (_, words) => words.prompt.nothingOffered,
  'chat/nothing-asked': (_, words) => words.slips.nothingAsked,
  'chat/not-offered': ({ most }, words) =>
    most === 1 ? words.prompt.notOffered : words.prompt.whichOffer(most),
  'chat/takes-nothing': ({ command, rest, instead }, words) =>
    words.prompt.standsAlone(command, rest, instead),
  'chat/nothing-seen': ({ words: known, yarns }, words) =>
    words.slips.nothingSeen(
      known,
      yarns.map((yarn) => words.prompt.yarn(yarn)),
    ),
};

const notAChoice = (word: string | null, choices: readonly string[], words: Words): string =>
  word === null ? words.prompt.missingChoice(choices) : words.prompt.notAChoice(word, choices);
