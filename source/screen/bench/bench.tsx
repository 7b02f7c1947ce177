import { Box, Text } from 'ink';
import type { BenchView } from '../../chat/view.ts';
import { BedRow } from './bed-row.tsx';
import { LabelledRow, labelWidth } from './labelled-row.tsx';
import { PhaseRow } from './phase-row.tsx';
import { YarnChip } from './yarn-chip.tsx';

interface Props {
  readonly view: BenchView;
  readonly columns: number;
  readonly rows: number;
}

/** Windows lower than this leave out what can be asked for: then, bed, yarn. */
const roomyRows = 20;
/** From here on the step that comes after is shown whole. */
const spaciousRows = 24;
/** Lower still, there is room for the instruction and the counters alone. */
const crampedRows = 13;
const wideColumns = 76;

/** The bench: what to do now, what comes after, where the work is. Always lower than the window. */
export function Bench({ view, columns, rows }: Props) {
  const roomy = rows >= roomyRows;
  const cramped = rows < crampedRows;
  const inner = columns - labelWidth;
  return (
    <Box flexDirection="column">
      {cramped ? null : (
        <Box paddingBottom={1}>
          <PhaseRow view={view} wide={columns >= wideColumns} />
        </Box>
      )}
      <LabelledRow label="now" minHeight={roomy ? 3 : 1}>
        <Text bold wrap={cramped ? 'truncate-end' : 'wrap'}>
          {view.now}
        </Text>
        {view.caution === null || cramped ? null : <Text color="yellow">{`! ${view.caution}`}</Text>}
      </LabelledRow>
      {roomy ? (
        <LabelledRow label="then" minHeight={rows >= spaciousRows ? 2 : 1}>
          <Text dimColor wrap={rows >= spaciousRows ? 'wrap' : 'truncate-end'}>
            {view.afterwards ?? ''}
          </Text>
        </LabelledRow>
      ) : null}
      {cramped ? null : (
        <LabelledRow label="shape" minHeight={roomy && columns < wideColumns ? 2 : 1}>
          <Text wrap={roomy ? 'wrap' : 'truncate-end'}>{view.shaping ?? 'no more moves'}</Text>
        </LabelledRow>
      )}
      <LabelledRow label="count">
        <Text wrap="truncate-end">{countText(view, inner)}</Text>
      </LabelledRow>
      {roomy ? (
        <>
          <LabelledRow label="yarn">
            <YarnRow view={view} />
          </LabelledRow>
          <LabelledRow label="bed">
            <BedRow view={view} width={inner} />
          </LabelledRow>
        </>
      ) : null}
    </Box>
  );
}

/** The counters, closer together or shorter where the row would be cut off. */
function countText({ counters }: BenchView, width: number): string {
  const long = counters.map(({ label, at, of }) => `${label} ${at} of ${of}`);
  const fits = ['    ', '  '].map((gap) => long.join(gap)).find((text) => text.length <= width);
  return fits ?? counters.map(({ label, at, of }) => `${label} ${at}/${of}`).join('  ');
}

function YarnRow({ view }: { readonly view: BenchView }) {
  const { feeder, parked, carriage, colours } = view;
  return (
    <Text wrap="truncate-end">
      {'feeder '}
      {feeder === null ? 'empty' : <YarnChip yarn={feeder} colour={colours.get(feeder)} />}
      {parked.map(({ yarn, end }) => (
        <Text key={yarn}>
          {'   parked '}
          {end}
          {': '}
          <YarnChip yarn={yarn} colour={colours.get(yarn)} />
        </Text>
      ))}
      {`   carriage ${carriage}`}
    </Text>
  );
}
