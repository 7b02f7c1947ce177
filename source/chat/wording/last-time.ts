import type { Session } from '../../session/session.ts';
import { type UsedYarn, usedYarn } from '../../session/used-yarn.ts';
import type { Words } from '../../wording/words.ts';

/** What was noted and weighed, as it is carried over: each says where it belongs. */
export const notesLike = (session: Session, words: Words): readonly string[] => [
  ...notesOf(session, words),
  ...usedYarn(session)
    .filter(({ atEnd }) => atEnd)
    .map((one) => sayUsedLastTime(one, words)),
];

function sayUsedLastTime({ yarn, usedGrams, leftGrams }: UsedYarn, words: Words): string {
  const left = words.amounts.mass(leftGrams);
  return usedGrams === null
    ? words.record.leftLastTime(left, yarn)
    : words.record.usedLastTime(usedGrams, yarn, left);
}

const notesOf = ({ notes, job }: Session, words: Words): readonly string[] =>
  [...notes].map(({ done, text }) =>
    done >= job.stepCount ? words.record.noteAtEnd(text) : words.record.noteAtStep(done + 1, text),
  );
