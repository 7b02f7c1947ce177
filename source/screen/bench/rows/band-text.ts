/** What stands on the band at each act: words in capitals at one side, a count at the other, few big letters. */
import type { Side } from '../../../bed/bed.ts';
import type { BenchView } from '../../../chat/view.ts';
import { goesBack } from '../../../session/way.ts';
import { plainText } from '../../../sheet/text.ts';
import { shoutStep } from '../../../wording/steps.ts';
import type { Words } from '../../../wording/words.ts';

export interface BandText {
  /** Where the hands go: the act is written there. */
  readonly side: Side;
  readonly act: string;
  /** What is left of the act where it has too little room. */
  readonly actShort?: string;
  /** The way that carriage, loops or yarn go; null where none of them goes sideways. */
  readonly arrow: Side | null;
  /** A long arrow: the carriage goes along the whole bed. */
  readonly long?: boolean;
  readonly name: string;
  readonly count: string;
  /** For the large view: what stands at the side of the hands, and what at the other side. */
  readonly big: string;
  readonly bigBeside?: string;
}

const arrowSign = (side: Side): string => (side === 'left' ? '<' : '>');

/** Passes that a switch counts come in place of the rows or rounds they make. */
export function bandText(view: BenchView, words: Words): BandText {
  const text = textOf(view, words, words);
  const { passes } = view;
  return passes
    ? { ...text, count: words.bench.pass(passes.at, passes.of), big: `${passes.at}/${passes.of}` }
    : text;
}

function textOf(view: BenchView, { bench: say }: Words, words: Words): BandText {
  const { glance, yarn, rows, way } = view;
  const name = yarn === null ? '' : plainText(words.prompt.yarn(yarn));
  const still: BandText = { side: 'left', act: '', arrow: null, name, count: '', big: '' };
  if (way) {
    const act = goesBack(way) ? say.back : say.mend;
    return { ...still, act, count: say.wayStep(way.at + 1, way.steps.length), big: act };
  }
  switch (glance.kind) {
    case 'pass': {
      const { to, inStripe } = glance;
      const count = inStripe ? say.row(inStripe.at, inStripe.of) : '';
      const isMain = view.phase === 'stripes' || view.phase === 'closing-row';
      const number = isMain ? String(rows.at + 1) : inStripe ? `${inStripe.at}/${inStripe.of}` : '';
      return {
        ...still,
        side: to,
        act: say.knit(to),
        arrow: to,
        long: true,
        count,
        big: arrowSign(to),
        bigBeside: number,
      };
    }
    case 'edge': {
      const { side, change, move, needle } = glance;
      const act = change === 'increase' ? say.out(side, needle) : say.in(side, needle);
      return {
        ...still,
        side,
        act,
        arrow: change === 'increase' ? side : side === 'left' ? 'right' : 'left',
        count: say.move(move.at, move.of),
        big: needle,
      };
    }
    case 'yarn':
      // The colour of a yarn that comes for another is what is seen from afar; letters would only break it up.
      return { ...still, act: say.thread(name), name: '', big: glance.leaves ? '' : name };
    case 'graft': {
      const { movements, count } = glance;
      const act = movements.map(({ edge, down, up }) => say.graft(edge, down, up)).join(', ');
      return { ...still, act, count: say.of(count.at, count.of), big: `${count.at}/${count.of}` };
    }
    case 'bars':
      return counted(still, say.bars(glance.from, glance.through), glance.through, glance.of, say);
    case 'passes': {
      const { rows: made, from, through, of, to } = glance;
      const act = say.rowsOf(made, from, through);
      return { ...counted(still, act, through, of, say), side: to };
    }
    case 'rounds':
      return counted(still, say.rounds(glance.from, glance.through), glance.through, glance.of, say);
    case 'holes':
      return counted(
        still,
        say.holes(glance.inThrough, glance.outThrough),
        glance.count.at + 1,
        glance.count.of,
        say,
      );
    case 'corner':
    case 'other': {
      const act = view.step ? shoutStep(view.step, words) : say.finished;
      return { ...still, act, big: act };
    }
  }
}

const counted = (still: BandText, act: string, at: number, of: number, say: Words['bench']): BandText => ({
  ...still,
  act,
  count: say.of(at, of),
  big: `${at}/${of}`,
});
