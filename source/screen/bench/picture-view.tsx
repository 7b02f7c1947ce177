import { Box } from 'ink';
import type { Picture } from '../../chat/grammar/intent.ts';
import type { BenchView } from '../../chat/view.ts';
import { chip } from '../../sheet/terminal/ansi.ts';
import type { DrawOptions } from '../../sheet/terminal/picture.ts';
import { plainText } from '../../sheet/text.ts';
import type { Words } from '../../wording/words.ts';
import { colourDepth, FinishedRows, Rows } from '../parts/rows.tsx';
import { drawPicture } from './pictures.ts';
import { bandRows } from './rows/band.ts';
import { instructionOf, rowsNeeded, wordRows } from './rows/instruction.ts';
import { type Brush, brushFor, endingAt, rowOf, widthOf } from './rows/row.ts';
import { countOf } from './rows/ruler.ts';

interface Props {
  readonly picture: Picture;
  readonly view: BenchView;
  readonly columns: number;
  /** Rows that it may fill: as many as the bench has, so that nothing moves when it comes and goes. */
  readonly room: number;
  readonly ascii: boolean;
  readonly words: Words;
  /** It stays: there is no way back to the bench to be told of. */
  readonly stays?: boolean;
}

/** The instruction keeps this height when it is shorter, so that the picture does not jump from step to step. */
const usualWordRows = 3;

/** A drawing of the bag in place of the bench's lower part; band and instruction stay, and one row tells the place. */
export default function PictureView({ picture, view, columns, room, ascii, words, stays = false }: Props) {
  const brush = brushFor(view.plan, colourDepth(process.env), ascii);
  const instruction = instructionOf(view, words);
  const wordHeight = Math.min(room - 3, Math.max(usualWordRows, rowsNeeded(instruction, columns)));
  const options: DrawOptions = {
    columns: columns - 1,
    rows: Math.max(3, room - wordHeight - 2),
    colour: brush.depth,
    glyphs: ascii ? 'ascii' : 'unicode',
    rowsDone: view.finished ? view.plan.rows : view.rows.at,
    carriage: view.bed.left === null || view.phase === 'cord' || view.phase === 'hem' ? null : view.carriage,
    ...sewingIn(view),
  };
  const lines = drawPicture(picture, view.plan, options, words);
  const band = bandRows(view, { width: columns, height: 1 }, brush, words);
  const below = wordRows(instruction, { width: columns, height: wordHeight }, brush, words);
  return (
    <Box flexDirection="column">
      <Rows rows={band} depth={brush.depth} />
      <Box height={options.rows} flexDirection="column">
        <FinishedRows rows={lines} />
      </Box>
      <Rows rows={[placeRow(view, columns, stays, brush, words)]} depth={brush.depth} />
      <Box height={wordHeight}>
        <Rows rows={below} depth={brush.depth} />
      </Box>
    </Box>
  );
}

/** Where the graft or the seam is, for the drawings that teach them. */
function sewingIn({ glance }: BenchView): Pick<DrawOptions, 'grafting' | 'sewing' | 'corner'> {
  if (glance.kind === 'graft') return { grafting: glance.movements };
  if (glance.kind === 'corner') return { corner: glance };
  return glance.kind === 'bars' ? { sewing: glance } : {};
}

/** Row, stripe, the yarn in the hands, and the way back to the bench; in narrow windows as much of it as there is room for. */
function placeRow(view: BenchView, columns: number, stays: boolean, brush: Brush, { bench: say }: Words) {
  const { rows, stripe, yarn, glance } = view;
  const sign = yarn === null ? undefined : brush.signs.get(yarn);
  const name =
    yarn === null ? [] : sign ? chip(sign, plainText(yarn), brush.depth, brush.ascii) : [{ text: yarn }];
  const count = countOf(glance);
  const done = [{ text: `${count ? say.done(count.at, count.of) : say.rowsDone(rows.at, rows.of)}   ` }];
  const inStripe = count || stripe.at === 0 ? [] : [{ text: `${say.stripe(stripe.at, stripe.of)}   ` }];
  const back = stays ? [] : [{ text: say.drawOff, dim: true }];
  const forms = [[...done, ...inStripe, ...name], [...done, ...name], name];
  const place = forms.find((form) => widthOf(form) + widthOf(back) + 2 <= columns) ?? [];
  return rowOf(columns, [{ column: 0, spans: place }, endingAt(columns, back)]);
}
