import { Box, Text } from 'ink';
import type { Picture } from '../../chat/intent.ts';
import type { BenchView } from '../../chat/view.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Units } from '../../shared/units.ts';
import type { DrawOptions } from '../../sheet/terminal/options.ts';
import { colourDepth, drawPicture } from '../pictures.ts';
import { Wrapped, wrappedRows } from './wrapped.tsx';

interface Props {
  readonly picture: Picture;
  readonly plan: Plan;
  readonly view: BenchView;
  readonly columns: number;
  readonly rows: number;
  readonly units: Units;
  readonly ascii: boolean;
}

/** Rows of window that hold neither picture nor instruction: the prompt, what separates them, and one to spare. */
const otherRows = 6;
/** The instruction keeps this height when it is shorter, so that the picture does not jump from step to step. */
const usualTextRows = 2;

/** A drawing of the bag in place of the counters, with the instruction below it; it grows with the work. */
export default function PictureView({ picture, plan, view, columns, rows, units, ascii }: Props) {
  const caution = view.caution === null ? null : `! ${view.caution}`;
  const textRows = wrappedRows(view.now, columns) + (caution === null ? 0 : wrappedRows(caution, columns));
  const roomForText = Math.max(usualTextRows, textRows);
  const options: DrawOptions = {
    columns: columns - 1,
    rows: Math.max(3, rows - otherRows - roomForText),
    colour: colourDepth(process.env),
    glyphs: ascii ? 'ascii' : 'unicode',
    rowsDone: view.finished ? plan.rows : (view.counters[0]?.at ?? 0),
    units,
  };
  return (
    <Box flexDirection="column">
      {drawPicture(picture, plan, options).map((line, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines of one picture
        <Text key={i} wrap="truncate-end">
          {line === '' ? ' ' : line}
        </Text>
      ))}
      <Box paddingTop={1} height={1 + roomForText} flexDirection="column">
        <Wrapped bold text={view.now} width={columns} />
        {caution === null ? null : <Wrapped color="yellow" text={caution} width={columns} />}
      </Box>
    </Box>
  );
}
