/** A measured figure, the target it has, and how both are shown and compared with the last time. */

/** The value that a share of all values does not exceed: nearest rank (common practice, no source). */
export function percentile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

export const median = (values: readonly number[]): number => percentile(values, 0.5);

export interface Figure {
  readonly what: string;
  readonly unit: string;
  readonly ours: number;
  /** The same of the bare program; null where there is nothing to set it against. */
  readonly bare: number | null;
  readonly target: Target | null;
}

/** `ratio` is ours to the bare program's, `ours` the figure itself. */
export interface Target {
  readonly of: 'ratio' | 'ours';
  readonly is: 'at most' | 'at least';
  readonly value: number;
}

export const atMost = (of: Target['of'], value: number): Target => ({ of, is: 'at most', value });
export const atLeast = (value: number): Target => ({ of: 'ours', is: 'at least', value });

/** What is judged: the ratio where there is one, since machines differ. */
const judged = ({ ours, bare }: Figure): number => (bare === null ? ours : ours / bare);

export function meets({ ours, bare, target }: Figure): boolean | null {
  if (!target) return null;
  const value = target.of === 'ratio' && bare !== null ? ours / bare : ours;
  return target.is === 'at most' ? value <= target.value : value >= target.value;
}

const short = (value: number): string =>
  value >= 1000 ? Math.round(value).toLocaleString('en-GB') : String(Number(value.toPrecision(3)));

const rowOf = (figure: Figure): readonly string[] => {
  const { what, unit, ours, bare, target } = figure;
  const verdict = { true: 'met', false: 'missed', null: '' }[`${meets(figure)}`];
  return [
    `${what}, ${unit}`,
    short(ours),
    bare === null ? '' : short(bare),
    bare === null ? '' : (ours / bare).toFixed(2),
    target ? `${target.of === 'ratio' ? 'ratio ' : ''}${target.is} ${short(target.value)}` : '',
    verdict ?? '',
  ];
};

/** A table in Markdown that can be read as it stands. */
export function formatTable(figures: readonly Figure[]): string {
  const rows = [['what', 'ours', 'bare', 'ratio', 'target', ''], ...figures.map(rowOf)];
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => row[i]?.length ?? 0)));
  const lines = rows.map((row) => `| ${row.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join(' | ')} |`);
  const rule = `| ${widths.map((width) => '-'.repeat(width)).join(' | ')} |`;
  return [lines[0], rule, ...lines.slice(1)].join('\n');
}

/** A page of results with these figures in the place of those that it had. */
export function withFigures(page: string, figures: string): string {
  const marks = /(<!-- figures -->\n)[\s\S]*(\n<!-- end of figures -->)/;
  if (!marks.test(page)) throw new Error('the page of results has lost the marks of its table');
  return page.replace(marks, (_, before: string, after: string) => `${before}\n${figures}\n${after}`);
}

/** Less than this much worse is noise. */
const noise = 1.1;

/** What got worse since `before`, a sentence each. Figures that only one of the runs has are passed over. */
export function sayWorse(before: readonly Figure[], after: readonly Figure[]): readonly string[] {
  return after.flatMap((figure) => {
    const past = before.find(({ what }) => what === figure.what);
    if (!past) return [];
    const [was, is] = [judged(past), judged(figure)];
    const isWorse = figure.target?.is === 'at least' ? is * noise < was : is > was * noise;
    const unit = figure.bare === null ? figure.unit : 'of the bare program';
    return isWorse ? [`${figure.what}: ${short(was)}, now ${short(is)} ${unit}`] : [];
  });
}
