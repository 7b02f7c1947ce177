import { exhaustive } from '../../shared/exhaustive.ts';
import type { LandmarkFault } from '../../steps/landmarks.ts';
import type { Words } from '../../wording/words.ts';
import type { ChatFault } from '../intent.ts';
import type { ReplyFault } from '../reply.ts';
import { formatRipBackFault, formatSeenFault } from './finding.ts';
import { formatReplanFault } from './finding-replan.ts';
import { sayYarn } from './yarns.ts';

/** Why a typed line could not be carried out, and what to type instead. */
export function formatChatFault(fault: ReplyFault, words: Words): string {
  switch (fault.code) {
    case 'seen/needle-off-bed':
    case 'seen/unknown-yarn':
    case 'seen/not-a-count':
      return formatSeenFault(fault, words);
    case 'rip-back/no-such-place':
    case 'rip-back/not-behind':
      return formatRipBackFault(fault, words);
    case 'replan/rows-not-whole-repeats':
    case 'replan/rows-too-few':
    case 'replan/rows-too-many':
    case 'replan/unknown-yarn':
    case 'replan/yarn-not-to-come':
    case 'replan/colours-meet':
    case 'replan/measure-impossible':
    case 'replan/too-late':
      return formatReplanFault(fault, words);
    default:
      return formatOwnFault(fault, words);
  }
}

function formatOwnFault(fault: ChatFault | LandmarkFault, words: Words): string {
  switch (fault.code) {
    case 'chat/unknown-command':
      return fault.nearest
        ? words.say`There is no command ${fault.word}. Did you mean ${fault.nearest}?`
        : words.say`There is no command ${fault.word}. Type help to see them all.`;
    case 'chat/ambiguous':
      return words.say`${fault.word} could be ${words.amounts.choice(fault.choices)}: type one more letter.`;
    case 'chat/not-a-count':
      return fault.word === null
        ? words.say`Something is missing. For example: ${fault.usage}.`
        : words.say`${fault.word} is not a whole number above 0. For example: ${fault.usage}.`;
    case 'chat/not-a-choice':
      return notAChoice(fault.word, fault.choices, words);
    case 'chat/not-a-side':
      return notAChoice(fault.word, [words.say`left`, words.say`right`], words);
    case 'chat/not-in-range':
      return words.say`${fault.word} is not a whole number from ${fault.least} to ${fault.most}.`;
    case 'chat/needs-more':
      return words.say`Something is missing. For example: ${fault.usage}.`;
    case 'chat/stands-alone':
      return words.say`${fault.usage} stands alone, so nothing is done: type it without "${fault.rest}".`;
    case 'chat/unknown-place':
      return words.say`${fault.word} is not a place to go to. For example: ${fault.usage}; type help ${fault.verb} for more.`;
    case 'chat/no-such-mark':
      return fault.known.length > 0
        ? words.say`There is no mark ${fault.name}. Marks: ${words.amounts.list(fault.known)}.`
        : words.say`No marks have been made yet. Type mark and a name.`;
    case 'steps/no-such-place':
      return words.say`There is no ${fault.what} ${fault.number}: this bag has ${fault.most}.`;
    case 'chat/left-of-what':
      return words.say`Say carriage ${fault.word}, or ${fault.word} and the needle at that edge: ${fault.word} ${fault.word === 'left' ? 'L24' : 'R21'}.`;
    case 'chat/which-edge':
      return words.say`Is ${fault.needle} the left edge or the right? Type left ${fault.needle}, or right ${fault.needle}, or give both edges.`;
    case 'chat/too-many-needles':
      return words.say`${words.amounts.list(fault.needles)} are more than two edges: give the outermost needles that hold loops.`;
    case 'chat/count-of-what':
      return words.say`${fault.word} of what? For example: row ${fault.word}, stripes ${fault.word}, ${fault.word} stitches.`;
    case 'chat/not-a-measurement':
      return words.say`${fault.word} is not understood here. For example: ${fault.usage}; type help replan for more.`;
    case 'chat/not-a-length':
      return words.cord.notALength(fault.text, fault.usage);
    case 'chat/not-a-weighing':
      return words.say`${fault.text} is not a yarn and a weight of 0 or more. For example: ${fault.usage}.`;
    case 'chat/not-two-sizes':
      return words.say`${fault.text} is not a width and a depth. For example: ${fault.usage}.`;
    case 'chat/nothing-found-before':
      return words.say`Nothing was said of this place yet: type find and what you see, without the word and.`;
    case 'chat/nothing-offered':
      return words.say`Nothing is on offer here: type find, rip or replan first.`;
    case 'chat/not-offered':
      return fault.most === 1
        ? words.say`There is one offer: type choose.`
        : words.say`Which one? Type choose and a number from 1 to ${fault.most}.`;
    case 'chat/takes-nothing':
      return words.slips.takesNothing(fault.command, fault.rest, fault.instead);
    case 'chat/nothing-seen':
      return words.slips.nothingSeen(
        fault.words,
        fault.yarns.map((yarn) => sayYarn(yarn, words)),
      );
    default:
      return exhaustive(fault);
  }
}

const notAChoice = (word: string | null, choices: readonly string[], words: Words): string =>
  word === null
    ? words.say`Something is missing: choose ${words.amounts.choice(choices)}.`
    : words.say`${word} is not one of ${words.amounts.choice(choices)}.`;
