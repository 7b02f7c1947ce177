/** At the desk: the bag, its figures, the yarn, the tools, and what the words mean; read before the work begins. */
import { opposite } from '../../bed/bed.ts';
import { kitOf, type Plan } from '../../planning/plan.ts';
import { reserveOf } from '../../planning/yarn-needs.ts';
import type { Words } from '../../wording/words.ts';
import { bagDrawing } from '../svg/bag-drawing.ts';
import { stripDrawing } from '../svg/strip-drawing.ts';
import { drawBag } from '../terminal/draw-bag.ts';
import { drawStrip } from '../terminal/draw-strip.ts';
import type { DrawOptions } from '../terminal/picture.ts';
import { formatAngle, inSentence } from '../text.ts';
import { yarnSigns } from '../yarn-signs.ts';
import {
  type Block,
  type Detail,
  figure,
  halfMm,
  type SheetOptions,
  termsInColumns,
  together,
  twoColumns,
  type YarnRow,
} from './block.ts';

/** Heights of the two pictures, as large as the page can have them. */
export const deskRooms: readonly number[] = [104, 96, 88, 80, 72, 64, 56, 48];
/** Neither is wider than its half of the page. */
const pictureMm = halfMm - 2;

/** The strip and the bag. */
export function deskPictures(
  plan: Plan,
  { words }: SheetOptions,
  look: DrawOptions,
  heightMm: number,
): Block {
  const { sheet } = words;
  const room = { widthMm: pictureMm, heightMm };
  return twoColumns(
    [
      { kind: 'heading', text: sheet.theStrip },
      figure(stripDrawing(plan, words, { ...room, id: 'strip' }), () =>
        drawStrip(plan, { ...look, columns: 180, rows: 2 * plan.rows + 8, rowsDone: plan.rows }, words),
      ),
    ],
    [
      { kind: 'heading', text: sheet.bag },
      figure(bagDrawing(plan, words, { ...room, id: 'bag' }), () => drawBag(plan, look, words)),
    ],
  );
}

/** What stands below the pictures. */
export function deskBlocks(plan: Plan, options: SheetOptions): readonly Block[] {
  const { words } = options;
  const { sheet } = words;
  const facts = factsOf(plan, words, options.class ?? false);
  const half = Math.ceil(facts.length / 2);
  return [
    twoColumns(
      [{ kind: 'facts', facts: facts.slice(0, half) }],
      [{ kind: 'facts', facts: facts.slice(half) }],
    ),
    ...(options.remarks ?? []).map((text): Block => ({ kind: 'ruled', text })),
    together(sheet.yarn, [
      { kind: 'yarns', titles: yarnTitles(plan, words), rows: yarnRows(plan, words) },
      { kind: 'text', quiet: true, text: toolsText(plan, words) },
    ]),
    together(sheet.words, [termsInColumns(termsFor(plan, words))]),
  ];
}

/** Words that the sheet's own sentences take for known, besides the three that name a side. */
const explained = ['e-wrap', 'waste-yarn', 'ravel-cord', 'bar', 'graft', 'relaxed'] as const;

/** As the glossary has them. */
function termsFor(
  { brief }: Plan,
  { sheet, glossary }: Words,
): readonly (readonly [word: string, means: string])[] {
  const titleOf = (id: keyof Words['glossary']): string => glossary[id].names.split(', ')[0] ?? id;
  const sides = [
    ['leading-edge', brief.crawl],
    ['trailing-edge', opposite(brief.crawl)],
    ['home-side', brief.homeSide],
  ] as const;
  return [
    ...sides.map(([id, side]) => [sheet.onSide(titleOf(id), side), glossary[id].means] as const),
    ...explained.map((id) => [titleOf(id), glossary[id].means] as const),
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
