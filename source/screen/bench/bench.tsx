import { Box, Text } from 'ink';
import type { BenchView } from '../../chat/view.ts';
import { sayYarn } from '../../chat/wording/yarns.ts';
import { say } from '../../shared/say.ts';
import { BedRow } from './bed-row.tsx';
import { LabelledRow, labelWidth } from './labelled-row.tsx';
import { PhaseRow } from './phase-row.tsx';
import { Fitting, Wrapped, wrappedRows } from './wrapped.tsx';
import { YarnChip } from './yarn-chip.tsx';

interface Props {
  readonly view: BenchView;
  readonly columns: number;
  readonly rows: number;
  /** Rows of the window that it may fill. */
  readonly room: number;
}

/** Windows lower than this leave out what can be asked for: then, bed, yarn. */
const roomyRows = 20;
/** From here on the step that comes after is shown whole. */
const spaciousRows = 24;
const wideColumns = 76;
/** A shorter instruction takes as many, so that nothing jumps from step to step. */
const usualNowRows = 3;
/** The phases and a blank one. */
const phaseRows = 2;
const countYarnBedRows = 3;

/**
 * The bench: what to do now, what comes after, where the work is. Always lower than the window: where rows are few, the
 * instruction and its caution stay whole and the rest gives way, in the end the label too.
 */
export function Bench({ view, columns, rows, room }: Props) {
  const inner = columns - labelWidth;
  const caution = view.caution === null ? null : `! ${view.caution}`;
  const spacious = rows >= spaciousRows;
  const rowsWithin = (width: number): number => rowsOf(view.now, width) + rowsOf(caution, width);
  const tight = rowsWithin(inner) > room;
  const nowWidth = tight ? columns : inner;
  const nowRows = rowsWithin(nowWidth);
  const thenRows = spacious ? Math.max(2, rowsOf(view.afterwards, inner)) : 1;
  const shapeRows = Math.max(columns < wideColumns ? 2 : 1, rowsOf(view.shaping, inner));
  const wholeRows = phaseRows + Math.max(usualNowRows, nowRows) + thenRows + shapeRows + countYarnBedRows;
  const roomy = rows >= roomyRows && wholeRows <= room;
  const spare = room - nowRows;
  return (
    <Box flexDirection="column">
      {roomy || spare >= phaseRows + 2 ? (
        <Box paddingBottom={1}>
          <PhaseRow view={view} wide={columns >= wideColumns} />
        </Box>
      ) : null}
      <Box
        flexDirection="column"
        flexShrink={0}
        height={roomy ? Math.max(usualNowRows, nowRows) : Math.min(nowRows, room)}
        overflow="hidden"
      >
        <LabelledRow label={tight ? null : say`now`}>
          <Wrapped bold text={view.now} width={nowWidth} />
          {caution === null ? null : <Wrapped color="yellow" text={caution} width={nowWidth} />}
        </LabelledRow>
      </Box>
      {roomy ? (
        <LabelledRow label={say`then`} minHeight={thenRows}>
          <Fitting dimColor text={view.afterwards ?? ''} width={inner} whole={spacious} />
        </LabelledRow>
      ) : null}
      {roomy || spare >= 2 ? (
        <LabelledRow label={say`shape`} minHeight={roomy ? shapeRows : 1}>
          <Fitting text={view.shaping ?? say`no more moves`} width={inner} whole={roomy} />
        </LabelledRow>
      ) : null}
      {roomy || spare >= 1 ? (
        <LabelledRow label={say`count`}>
          <Text wrap="truncate-end">{countText(view, inner)}</Text>
        </LabelledRow>
      ) : null}
      {roomy ? (
        <>
          <LabelledRow label={say`yarn`}>
            <YarnRow view={view} />
          </LabelledRow>
          <LabelledRow label={say`bed`}>
            <BedRow view={view} width={inner} />
          </LabelledRow>
        </>
      ) : null}
    </Box>
  );
}

const rowsOf = (text: string | null, width: number): number => (text === null ? 0 : wrappedRows(text, width));

/** The counters, closer together or shorter where the row would be cut off. */
function countText({ counters }: BenchView, width: number): string {
  const long = counters.map(({ label, at, of }) => say`${label} ${at} of ${of}`);
  const short = counters.map(({ label, at, of }) => `${label} ${at}/${of}`);
  const texts = [long.join('    '), long.join('  '), short.join('  ')];
  return texts.find((text) => text.length <= width) ?? short.join(' ');
}

function YarnRow({ view }: { readonly view: BenchView }) {
  const { feeder, parked, carriage, colours } = view;
  return (
    <Text wrap="truncate-end">
      {`${say`feeder`} `}
      {feeder === null ? say`empty` : <YarnChip yarn={sayYarn(feeder)} colour={colours.get(feeder)} />}
      {parked.map(({ yarn, end }) => (
        <Text key={yarn}>
          {`   ${say`parked ${end}:`} `}
          <YarnChip yarn={sayYarn(yarn)} colour={colours.get(yarn)} />
        </Text>
      ))}
      {`   ${say`carriage ${carriage}`}`}
    </Text>
  );
}
