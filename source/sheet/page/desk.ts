/** At the desk: the bag, its figures, the yarn, the tools, and what the words mean; read before the work begins. */
import { opposite } from '../../bed/bed.ts';
import { kitOf } from '../../planning/kit.ts';
import type { Plan } from '../../planning/plan.ts';
import { reserveOf } from '../../planning/yarn-needs.ts';
import type { Words } from '../../wording/words.ts';
import { bagDrawing } from '../svg/bag-drawing.ts';
import { stripDrawing } from '../svg/strip-drawing.ts';
import { drawBag } from '../terminal/draw-bag.ts';
import { drawStrip } from '../terminal/draw-strip.ts';
import type { DrawOptions } from '../terminal/picture.ts';
import { formatAngle, inSentence } from '../text.ts';
import { yarnSigns } from '../yarn-signs.ts';
import { type Block, besideColumns, type Detail, type SheetOptions, type YarnRow } from './block.ts';
import { blanksFor } from './class.ts';

/** Heights of the two pictures, as large as the page can have them. */
export interface DeskRoom {
  readonly bagMm: number;
  readonly stripMm: number;
  /** No picture is wider. */
  readonly widthMm: number;
}
export const deskRooms: readonly DeskRoom[] = [
  { bagMm: 92, stripMm: 62, widthMm: 84 },
  { bagMm: 82, stripMm: 52, widthMm: 84 },
  { bagMm: 70, stripMm: 46, widthMm: 80 },
  { bagMm: 60, stripMm: 42, widthMm: 72 },
  { bagMm: 54, stripMm: 38, widthMm: 64 },
];

export function deskBlocks(
  plan: Plan,
  options: SheetOptions,
  look: DrawOptions,
  room: DeskRoom,
): readonly Block[] {
  const { words } = options;
  const { sheet } = words;
  const blanks = options.class ? blanksFor(plan, words) : [];
  const bag = bagDrawing(plan, words, { widthMm: room.widthMm, heightMm: room.bagMm, id: 'bag' });
  const strip = stripDrawing(plan, words, { widthMm: room.widthMm, heightMm: room.stripMm, id: 'strip' });
  const hanging = (): readonly string[] =>
    drawStrip(plan, { ...look, columns: 180, rows: 2 * plan.rows + 8, rowsDone: plan.rows }, words);
  return [
    besideColumns(
      bag.widthMm,
      [{ kind: 'figure', drawing: bag, plain: () => drawBag(plan, look, words) }],
      [
        { kind: 'facts', facts: factsOf(plan, words, options.class ?? false) },
        ...(options.remarks ?? []).map((text): Block => ({ kind: 'ruled', text })),
        { kind: 'text', quiet: true, text: toolsText(plan, words) },
      ],
    ),
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', text: sheet.yarn },
        { kind: 'yarns', titles: yarnTitles(plan, words), rows: yarnRows(plan, words) },
      ],
    },
    besideColumns(
      strip.widthMm,
      [
        { kind: 'heading', text: sheet.theStrip },
        { kind: 'figure', drawing: strip, plain: hanging },
      ],
      [
        { kind: 'heading', text: sheet.words },
        { kind: 'terms', terms: sheet.glossary(plan.brief.crawl, opposite(plan.brief.crawl)) },
      ],
    ),
    ...(blanks.length > 0
      ? [
          {
            kind: 'together',
            blocks: [
              { kind: 'heading', text: sheet.mySwatch, note: sheet.mySwatchNote },
              { kind: 'blanks', blanks },
            ],
          } as const,
        ]
      : []),
  ];
}

function factsOf(plan: Plan, words: Words, isForClass: boolean): readonly Detail[] {
  const { brief, size, gauge } = plan;
  const { sheet, page, amounts } = words;
  const { length } = amounts;
  const asked = [size.wantedWidthCm, size.wantedDepthCm].filter((cm) => cm !== null);
  const given = (cm: number, doubtCm: number): string => sheet.give(length(cm), length(doubtCm));
  const { swatch } = brief;
  return [
    {
      label: sheet.flatAndSewn,
      value: sheet.by(
        given(size.widthCm, size.widthUncertaintyCm),
        given(size.depthCm, size.depthUncertaintyCm),
      ),
    },
    ...(asked.length === 2 && !isForClass
      ? [{ label: sheet.askedFor, value: asked.map((cm) => length(cm)).join(' × ') }]
      : []),
    { label: sheet.inside, value: page.inside(length(size.depthBelowCordCm), length(size.mouthCm)) },
    ...(plan.boxed
      ? [
          {
            label: sheet.boxedBottom,
            value: sheet.baseText(plan.boxed.baseWidthCm, plan.boxed.baseDepthCm, plan.boxed.sideCm),
          },
        ]
      : []),
    ...(plan.hem
      ? [{ label: sheet.hem, value: sheet.hemText(plan.hem.stitches, plan.hem.rows, plan.hem.heightCm) }]
      : []),
    {
      label: sheet.stitchesAndRows,
      value: sheet.stitchesAndRowsText(plan.stitches, plan.rows, plan.knittedRows),
    },
    {
      label: sheet.shaping,
      value: sheet.shapingText(plan.shapings, brief.shapeEveryRows, brief.edgeStitches),
    },
    { label: sheet.crawls, value: sheet.crawlsText(brief.crawl, brief.homeSide) },
    {
      label: sheet.stripesLabel,
      value: sheet.stripesText(plan.stripes.length, formatAngle(size.stripeAngleDeg)),
    },
    ...(isForClass
      ? []
      : [
          {
            label: swatch.guess
              ? sheet.swatchGuessed
              : swatch.onPiece
                ? sheet.pieceMeasured
                : sheet.swatchMeasured,
            value: sheet.swatchText(
              swatch.stitches,
              swatch.rows,
              [swatch.widthMm, swatch.heightMm].map((mm) => length(mm / 10)).join(' × '),
              swatch.state,
            ),
          },
        ]),
    {
      label: sheet.stitchSize,
      value: [
        sheet.stitchSizeText(swatch.stitchSize),
        ...(isForClass ? [] : [sheet.yarnInAStitch(gauge.loopLengthMm, gauge.loopLengthMeasured)]),
      ].join('; '),
    },
    ...(brief.finishState === swatch.state
      ? []
      : [{ label: sheet.usedAs, value: sheet.usedAsText(brief.finishState) }]),
    {
      label: sheet.bedLabel,
      value: sheet.bedText(brief.bed.needles, brief.bed.pitchMm, plan.hangings.length),
    },
  ];
}

/** The yarns stand in the table above. */
function toolsText(plan: Plan, { kit }: Words): string {
  const needed = kitOf(plan);
  return [kit.tools(needed), kit.ravelCord(needed)].filter((text) => text !== '').join(' ');
}

const yarnTitles = ({ gauge }: Plan, { sheet }: Words): readonly string[] => [
  sheet.sign,
  sheet.yarn,
  sheet.forWhat,
  sheet.needs,
  sheet.withReserve(Math.round(100 * reserveOf(gauge)) - 100),
  sheet.youHave,
];

function yarnRows(plan: Plan, words: Words): readonly YarnRow[] {
  const signs = yarnSigns(plan, 'print');
  const { amounts } = words;
  return plan.yarn.map((need) => ({
    name: inSentence(need.yarn),
    sign: signs.get(need.yarn) ?? null,
    use: useOf(plan, need.yarn, words),
    length: amounts.yarnNeeded(need.metres),
    weight: need.withReserveGrams === null ? '' : amounts.massNeeded(need.withReserveGrams),
    have: haveText(need, words),
  }));
}

function useOf({ brief, stripes, hem, cord }: Plan, yarn: string, { sheet }: Words): string {
  if (yarn === brief.waste.yarn) return sheet.wasteRows;
  const uses = [
    ...(stripes.some((stripe) => stripe.yarn === yarn) ? [sheet.stripesUse] : []),
    ...(stripes.at(-1)?.yarn === yarn ? [sheet.graftAndSeam] : []),
    ...(hem?.yarn === yarn ? [sheet.hemUse] : []),
    ...(cord.yarn === yarn ? [sheet.cordUse] : []),
  ];
  return uses.length > 0 ? uses.join(', ') : sheet.notUsed;
}

function haveText({ haveGrams, shortGrams }: Plan['yarn'][number], { sheet, amounts }: Words): string {
  if (haveGrams === null) return '';
  const have = amounts.mass(haveGrams);
  return shortGrams ? sheet.short(have, amounts.massNeeded(shortGrams)) : sheet.enough(have);
}
