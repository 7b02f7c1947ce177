/**
 * A bag to match one that was made: the same again, its colours turned round or others in their place, or another size. The
 * size that is asked for is divided by what the first bag came to over its plan, where nothing more was learnt.
 */
import type { BriefFile } from '../planning/brief.ts';
import { colouredOf, inYarns, stripeYarns, turnColours } from '../planning/turn-colours.ts';
import type { Session } from '../session/session.ts';
import { briefLike, outcomeOf } from './like.ts';

export interface OtherYarn {
  readonly name: string;
  readonly colour: string;
  /** Null takes that of the yarn whose place it takes. */
  readonly metresPer100g: number | null;
  readonly grams: number | null;
}

export type MatchWish =
  | { readonly is: 'same' }
  /** Each yarn takes the place of the next. */
  | { readonly is: 'turned' }
  | { readonly is: 'larger' | 'smaller' }
  | { readonly is: 'size'; readonly widthCm: number; readonly depthCm: number }
  /** In the order of the stripes; yarns that are left over stay. */
  | { readonly is: 'yarns'; readonly yarns: readonly OtherYarn[] };

/** A size up is a fifth wider and deeper (rule of thumb). */
const sizeUp = 1.2;

type Json = Readonly<Record<string, unknown>>;

/** The JSON of the brief, by another name. `isLearned`: more bags than this one tell what becomes of the size. */
export function matchBrief(
  file: BriefFile,
  session: Session,
  wish: MatchWish,
  { name, isLearned }: { readonly name: string; readonly isLearned: boolean },
): Json {
  const like = { ...briefLike(file, session), name };
  switch (wish.is) {
    case 'same':
      return like;
    case 'turned':
      return turnColours(like, 1);
    case 'larger':
      return { ...like, bag: scaled(session, sizeUp) };
    case 'smaller':
      return { ...like, bag: scaled(session, 1 / sizeUp) };
    case 'size': {
      const { width, depth } = (isLearned ? null : outcomeOf(session)) ?? { width: 1, depth: 1 };
      return {
        ...like,
        bag: { ...boxedOf(session, 1), widthCm: wish.widthCm / width, depthCm: wish.depthCm / depth },
      };
    }
    case 'yarns':
      return inOtherYarns(like, wish.yarns);
  }
}

function scaled(session: Session, by: number): Json {
  const { widthCm, depthCm } = session.job.plan.size;
  return { ...boxedOf(session, by), widthCm: by * widthCm, depthCm: by * depthCm };
}

/** A boxed bottom grows with the bag. */
const boxedOf = ({ job }: Session, by: number): Json => {
  const { boxedCm } = job.plan.brief;
  return boxedCm > 0 ? { boxedCm: by * boxedCm } : {};
};

function inOtherYarns(json: Json, others: readonly OtherYarn[]): Json {
  const coloured = colouredOf(json);
  const names = stripeYarns(coloured);
  const otherFor = new Map(names.slice(0, others.length).map((name, i) => [name, others[i]]));
  const yarns = Object.entries(coloured.yarns).map(([name, yarn]) => {
    const other = otherFor.get(name);
    if (!other) return [name, yarn];
    const own = coloured.yarns[other.name];
    if (own) return [other.name, own];
    const { colour, metresPer100g, grams } = other;
    const length = metresPer100g ?? yarn.metresPer100g;
    return [other.name, { colour, metresPer100g: length, ...(grams === null ? {} : { grams }) }];
  });
  return inYarns({ ...json, yarns: Object.fromEntries(yarns) }, (yarn) => otherFor.get(yarn)?.name ?? yarn);
}

/** A name that no other bag has: `Dice bag 2`. */
export function nextName(name: string, taken: readonly string[]): string {
  const stem = name.replace(/ \d+$/, '');
  let number = 2;
  while (taken.includes(`${stem} ${number}`)) number++;
  return `${stem} ${number}`;
}
