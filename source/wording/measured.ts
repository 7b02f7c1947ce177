import {
  type MeasureCordFault,
  type MeasuredFault,
  type UsedYarn,
  usedYarn,
  type WeighFault,
} from '../session/measured.ts';
import { currentStep, type Session } from '../session/session.ts';
import { gramsPerOunce, type Units } from '../shared/units.ts';
import type { SayingsBy } from './by-kind.ts';
import { labelled } from './page.ts';
import type { Words } from './words.ts';

/** Once a weighing is kept. */
export function sayWeighed(session: Session, yarn: string, words: Words): string {
  const used = usedYarn(session).find((one) => one.yarn === yarn);
  return used ? words.record.weighed(yarn, sayUsed(used, words)) : '';
}

/** A paragraph for each yarn that was weighed. */
export const weighedLines = (session: Session, words: Words): readonly string[] =>
  usedYarn(session).flatMap((used) =>
    labelled(words.prompt.yarn(used.yarn), sayBeside(session, used, words)),
  );

function sayBeside({ job }: Session, used: UsedYarn, words: Words): string {
  const planned = job.plan.yarn.find(({ yarn }) => yarn === used.yarn)?.grams ?? null;
  const parts = [
    sayUsed(used, words),
    ...(planned === null ? [] : [words.record.planned(planned)]),
    ...(used.atEnd ? [] : [words.record.weighedAfterStep(used.done)]),
  ];
  return parts.join('; ');
}

function sayUsed({ leftGrams, haveGrams, usedGrams }: UsedYarn, words: Words): string {
  const left = words.amounts.mass(leftGrams);
  if (haveGrams === null || usedGrams === null) return words.record.left(left);
  return words.record.usedOfLeft(usedGrams, left, haveGrams);
}

export const weighFaults: SayingsBy<'code', WeighFault, [words: Words]> = {
  'weigh/no-such-yarn': ({ yarn, known }, words) => words.record.noSuchYarn(yarn, known),
  'weigh/not-a-weight': ({ grams, yarn }, words) =>
    words.record.notAWeight(exactMass(grams, words.units, words), yarn),
  'weigh/more-than-before': ({ haveGrams, yarn, grams }, words) =>
    words.record.moreThanBefore(
      exactMass(haveGrams, words.units, words),
      yarn,
      exactMass(grams, words.units, words),
    ),
};

/** As near as kitchen scales show it, so that the two amounts are seen to differ. */
const exactMass = (grams: number, { mass }: Units, words: Words): string => {
  const [value, places] = mass === 'oz' ? [grams / gramsPerOunce, 100] : [grams, 10];
  return `${words.amounts.decimal(Math.round(value * places) / places, 6)} ${mass}`;
};

/** Once a size is kept; nothing where none was. */
export function sayMeasured({ measured, job }: Session, words: Words): readonly string[] {
  if (!measured) return [];
  const { measured: say, amounts } = words;
  const { size } = job.plan;
  const beside = (side: 'width' | 'depth'): string => {
    const offCm = measured[`${side}Cm`] - size[`${side}Cm`];
    return amounts.length(Math.abs(offCm)) === amounts.length(0)
      ? say.asPlanned(side)
      : say.beside(side, offCm, size[`${side}UncertaintyCm`]);
  };
  return [say.got(measured.widthCm, measured.depthCm), beside('width'), beside('depth')];
}

/** The same as lines of a record. */
export const measuredLines = (session: Session, words: Words): readonly string[] =>
  sayMeasured(session, words).flatMap((line) => labelled('', line));

export const measuredFaults: SayingsBy<'code', MeasuredFault, [words: Words]> = {
  'measured/not-a-size': ({ widthCm, depthCm }, { measured }) => measured.impossible(widthCm, depthCm),
};

/** How many rounds it takes in all, and how many of them are still to be knitted. */
export function sayCord(session: Session, words: Words): string {
  const { cord } = session.job.plan;
  const act = currentStep(session)?.act;
  const knitted = act?.kind === 'measure-rounds' ? act.rounds : cord.rounds;
  const { planned, ofSecond } = words.measured.cord;
  const said = planned(cord.rounds, cord.rounds - knitted, cord.lengthCm);
  return cord.draws === 2 ? said + ofSecond : said;
}

export const cordFaults: SayingsBy<'code', MeasureCordFault, [words: Words]> = {
  'cord/not-asked': (_, { measured }) => measured.cord.notAsked,
  'cord/not-a-length': ({ lengthCm }, { measured }) => measured.cord.impossible(lengthCm),
};
