import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import type { Point } from '../geometry/shape.ts';
import { type Drawing, element, lineFrom, pair, palette, strokePath, textAt } from './element.ts';

const mostHoles = 40;

/** The mouth laid out flat: which eyelets the cord goes through, in and out, and the gap at the graft. */
export function threadingDiagram({ eyelets }: Plan, widthMm: number, words: Words): Drawing {
  const shown = Math.min(eyelets.made, mostHoles);
  const isCut = eyelets.made > mostHoles;
  const numberAt = (i: number): number => (isCut && i >= shown / 2 ? eyelets.made - shown + i + 1 : i + 1);
  const step = widthMm / (shown + 1);
  const used = new Map(eyelets.used.map((number, i) => [number, i + 1]));
  const y = 8;
  const places = Array.from({ length: shown }, (_, i) => ({ number: numberAt(i), x: (i + 1) * step }));
  const stops: Point[] = [
    [0, 0],
    ...places
      .filter(({ number }) => used.has(number))
      .map(({ number, x }): Point => [x, used.get(number) ?? 0]),
    [widthMm, 0],
  ];
  const strands = stops.slice(1).map(([x], i) => {
    const [from, hole] = stops[i] ?? [0, 0];
    const outside = hole % 2 === 0;
    const bend = outside ? -3.4 : 3.4;
    return strokePath(
      `M${pair([from, y])}Q${pair([(from + x) / 2, y + bend])} ${pair([x, y])}`,
      outside ? { 'stroke-width': 0.6 } : { 'stroke-width': 0.4, 'stroke-dasharray': '0.7 0.6' },
    );
  });
  const holes = places.map(({ number, x }) =>
    element('circle', {
      cx: x,
      cy: y,
      r: Math.min(0.9, step * 0.3),
      fill: used.has(number) ? palette.ink : palette.paper,
      stroke: palette.ink,
      'stroke-width': 0.25,
    }),
  );
  // A single eyelet that is passed by has its name; where every second one is, the drawing shows it.
  const passedBy = eyelets.skipped.length === 1 && eyelets.made > 4 ? eyelets.skipped : [];
  const ends = [eyelets.used[0] ?? 1, eyelets.used.at(-1) ?? eyelets.made];
  const named = places.filter(({ number }) => ends.includes(number) || passedBy.includes(number));
  return {
    widthMm,
    heightMm: 14.5,
    title: words.say`The cord runs through ${eyelets.used.length} of ${eyelets.made} eyelets, in and out`,
    body: [
      textAt([0, 3], words.say`full line: outside; broken line: inside`, {
        size: 2.3,
        colour: palette.quiet,
      }),
      lineFrom([0, y], [widthMm, y], { stroke: palette.rule, 'stroke-width': 0.2 }),
      ...strands,
      ...holes,
      ...named.map(({ number, x }) =>
        textAt([x, 13.8], passedBy.includes(number) ? words.say`${number} passed by` : String(number), {
          anchor: 'middle',
          size: 2.3,
        }),
      ),
      isCut ? textAt([widthMm / 2, 3], '…', { anchor: 'middle' }) : '',
    ].join(''),
  };
}
