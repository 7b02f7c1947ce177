/** The drawings by name, loaded only when one is asked for. */

import type { Picture } from '../../chat/grammar/intent.ts';
import type { Plan } from '../../planning/plan.ts';
import { drawBag } from '../../sheet/terminal/draw-bag.ts';
import { drawBed } from '../../sheet/terminal/draw-bed.ts';
import { drawCord, drawGraft, drawHem, drawSeam } from '../../sheet/terminal/draw-by-hand.ts';
import { drawFold } from '../../sheet/terminal/draw-fold.ts';
import { drawStrip } from '../../sheet/terminal/draw-strip.ts';
import type { DrawOptions } from '../../sheet/terminal/picture.ts';
import type { Words } from '../../wording/words.ts';

const painters = {
  strip: drawStrip,
  bag: drawBag,
  fold: drawFold,
  bed: drawBed,
  hem: drawHem,
  graft: drawGraft,
  seam: drawSeam,
  cord: drawCord,
} as const;

export const drawPicture = (
  picture: Picture,
  plan: Plan,
  options: DrawOptions,
  words: Words,
): readonly string[] => painters[picture](plan, options, words);
