import { Box, Text } from 'ink';
import type { BenchView } from '../../chat/view.ts';
import { sayYarn } from '../../chat/wording/yarns.ts';
import { say } from '../../shared/say.ts';
import { BedRow } from './bed-row.tsx';
import { LabelledRow, labelWidth } from './labelled-row.tsx';
import { PhaseRow } from './phase-row.tsx';
import { Fitting, Wrapped } from './wrapped.tsx';
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
      <LabelledRow label={say`now`} minHeight={roomy ? 3 : 1}>
        <Fitting bold text={view.now} width={inner} whole={!cramped} />
        {view.caution === null || cramped ? null : (
          <Wrapped color="yellow" text={`! ${view.caution}`} width={inner} />
        )}
      </LabelledRow>
      {roomy ? (
        <LabelledRow label={say`then`} minHeight={rows >= spaciousRows ? 2 : 1}>
          <Fitting dimColor text={view.afterwards ?? ''} width={inner} whole={rows >= spaciousRows} />
        </LabelledRow>
      ) : null}
      {cramped ? null : (
        <LabelledRow label={say`shape`} minHeight={roomy && columns < wideColumns ? 2 : 1}>
          <Fitting text={view.shaping ?? say`no more moves`} width={inner} whole={roomy} />
        </LabelledRow>
      )}
      <LabelledRow label={say`count`}>
        <Text wrap="truncate-end">{countText(view, inner)}</Text>
      </LabelledRow>
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
