import { Box, Text } from 'ink';
import type { Picture } from '../../chat/intent.ts';
import type { BenchView } from '../../chat/view.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Units } from '../../shared/units.ts';
import type { DrawOptions } from '../../sheet/terminal/options.ts';
import { colourDepth, drawPicture } from '../pictures.ts';

interface Props {
  readonly picture: Picture;
  readonly plan: Plan;
  readonly view: BenchView;
  readonly columns: number;
  readonly rows: number;
  readonly units: Units;
  readonly ascii: boolean;
}

/** Rows of window that are not the picture's: the instruction, the prompt, what separates them, and one to spare. */
const otherRows = 8;

/** A drawing of the bag in place of the counters, with the instruction below it; it grows with the work. */
export default function PictureView({ picture, plan, view, columns, rows, units, ascii }: Props) {
  const options: DrawOptions = {
    columns: columns - 1,
    rows: Math.max(3, rows - otherRows),
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
      <Box paddingTop={1} height={3}>
        <Text bold wrap="truncate-end">
          {view.now}
        </Text>
      </Box>
    </Box>
  );
}
