import { Text } from 'ink';
import type { BenchView } from '../../chat/view.ts';
import { inkOn } from '../../shared/colour.ts';
import { say } from '../../shared/say.ts';
import { bedCells } from './bed-cells.ts';

/** The needle bed with the stitches in their yarn's colour and first letter, and the carriage at its side. */
export function BedRow({ view, width }: { readonly view: BenchView; readonly width: number }) {
  const { bed, carriage } = view;
  const edges = bed.leftName === null ? say`no loops` : say`${bed.leftName} to ${bed.rightName ?? ''}`;
  const room = width - edges.length - 2 - 2 * carriageMark.length;
  const runs = bedCells(bed, room);
  return (
    <Text wrap="truncate-end">
      <Text bold>{carriage === 'left' ? carriageMark : gap}</Text>
      {runs.map((run, i) =>
        run.kind === 'loops' && bed.colour ? (
          // biome-ignore lint/suspicious/noArrayIndexKey: runs have no identity but their place
          <Text key={i} backgroundColor={bed.colour} color={inkOn(bed.colour)}>
            {run.text}
          </Text>
        ) : (
          // biome-ignore lint/suspicious/noArrayIndexKey: runs have no identity but their place
          <Text key={i} dimColor={run.kind === 'empty'}>
            {run.text}
          </Text>
        ),
      )}
      <Text bold>{carriage === 'right' ? carriageMark : gap}</Text>
      {`  ${edges}`}
    </Text>
  );
}

const carriageMark = '[=]';
const gap = '   ';
