import { exhaustive, isOf } from '../shared/result.ts';
import type { LandmarkFault } from '../steps/landmarks.ts';
import { formatFault } from '../wording/faults.ts';
import { formatSeenFault } from '../wording/finding.ts';
import { sayWhichUnit } from '../wording/replan.ts';
import type { Words } from '../wording/words.ts';
import type { ChatFault } from './grammar/intent.ts';
import type { ReplyFault } from './reply.ts';

/** Why a typed line could not be carried out, and what to type instead. */
export function formatChatFault(fault: ReplyFault, words: Words): string {
  if (isOf(fault, 'seen')) return formatSeenFault(fault, words);
  return isOf(fault, 'rip-back') || isOf(fault, 'replan') || isOf(fault, 'way')
    ? formatFault(fault, words)
    : formatOwnFault(fault, words);
}

function formatOwnFault(fault: ChatFault | LandmarkFault, words: Words): string {
  switch (fault.code) {
    case 'chat/unknown-command':
      return fault.nearest
        ? words.prompt.unknownCommand(fault.word, fault.nearest)
        : words.prompt.noCommand(fault.word);
    case 'chat/meant':
      return words.wishes.typeThis(fault.line);
    case 'chat/ambiguous':
      return words.prompt.ambiguous(fault.word, fault.choices);
    case 'chat/not-a-count':
      return fault.word === null
        ? words.prompt.needsMore(fault.usage)
        : words.prompt.notACount(fault.word, fault.usage);
    case 'chat/not-a-choice':
      return notAChoice(fault.word, fault.choices, words);
    case 'chat/not-a-side':
      return notAChoice(fault.word, words.prompt.sides, words);
    case 'chat/not-in-range':
      return words.prompt.notInRange(fault.word, fault.least, fault.most);
    case 'chat/needs-more':
      return words.prompt.needsMore(fault.usage);
    case 'chat/unknown-place':
      return words.prompt.unknownPlace(fault.word, fault.usage, fault.verb);
    case 'chat/no-such-mark':
      return fault.known.length > 0 ? words.prompt.noSuchMark(fault.name, fault.known) : words.prompt.noMarks;
    case 'steps/no-such-place':
      return words.prompt.noSuchPlace(fault.what, fault.number, fault.most);
    case 'chat/left-of-what':
      return words.prompt.leftOfWhat(fault.word, fault.word === 'left' ? 'L24' : 'R21');
    case 'chat/which-edge':
      return words.prompt.whichEdge(fault.needle);
    case 'chat/too-many-needles':
      return words.prompt.tooManyNeedles(fault.needles);
    case 'chat/count-of-what':
      return words.prompt.countOfWhat(fault.word);
    case 'chat/which-unit':
      return sayWhichUnit(fault, words);
    case 'chat/not-a-measurement':
      return words.prompt.notAMeasurement(fault.word, fault.usage);
    case 'chat/not-a-length':
      return words.measured.cord.notALength(fault.text, fault.usage);
    case 'chat/not-a-weighing':
      return words.prompt.notAWeighing(fault.text, fault.usage);
    case 'chat/not-two-sizes':
      return words.prompt.notTwoSizes(fault.text, fault.usage);
    case 'chat/nothing-found-before':
      return words.prompt.nothingFoundBefore;
    case 'chat/nothing-offered':
      return words.prompt.nothingOffered;
    case 'chat/nothing-asked':
      return words.slips.nothingAsked;
    case 'chat/not-offered':
      return fault.most === 1 ? words.prompt.notOffered : words.prompt.whichOffer(fault.most);
    case 'chat/takes-nothing':
      return words.prompt.standsAlone(fault.command, fault.rest, fault.instead);
    case 'chat/nothing-seen':
      return words.slips.nothingSeen(
        fault.words,
        fault.yarns.map((yarn) => words.prompt.yarn(yarn)),
      );
    default:
      return exhaustive(fault);
  }
}

const notAChoice = (word: string | null, choices: readonly string[], words: Words): string =>
  word === null ? words.prompt.missingChoice(choices) : words.prompt.notAChoice(word, choices);
