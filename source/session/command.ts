import type { ReplanFault } from '../planning/plan-from.ts';
import type { MeasureCordFault, MeasuredFault, WeighFault } from './measured.ts';
import type { RipBackFault } from './rip-back/rip-back.ts';
import type { MendName, WayFault } from './way.ts';

/** What a maker can do to a session. Accepted commands are what the log records, one line each. */
export type Command =
  | { readonly do: 'confirm'; readonly count: number }
  | { readonly do: 'back' }
  | { readonly do: 'redo' }
  /** Go to where `done` steps are confirmed, whatever lies between. */
  | { readonly do: 'go'; readonly done: number }
  | { readonly do: 'note'; readonly text: string }
  | { readonly do: 'mark'; readonly name: string }
  /** The bag is called so from now on. */
  | { readonly do: 'rename'; readonly name: string }
  /** So much is left of a yarn, by the scales. */
  | { readonly do: 'weigh'; readonly yarn: string; readonly grams: number }
  /** The bag measures so much, sewn and lying flat. */
  | { readonly do: 'measured'; readonly widthCm: number; readonly depthCm: number }
  /** The first rounds of the cord are so long; its rest is planned by that. */
  | { readonly do: 'cord'; readonly lengthCm: number }
  /** The hands set out on the way back to where `done` steps are confirmed. */
  | { readonly do: 'rip'; readonly done: number }
  /** The hands set out to set mistakes right that are in the work once `place` steps are confirmed. */
  | ({ readonly do: 'mend' } & MendName)
  /** The next thing on the way is done. */
  | { readonly do: 'on-the-way' }
  /** The way is left where it is. */
  | { readonly do: 'stop' }
  /**
   * The rest is planned again from here: rows round the tube, the piece's own gauge, and yarn `to` in place of `from` from
   * the next stripe on, and the cord of the yarn `cord`. A yarn that the brief does not have, `to` or else `cord`, comes with
   * its colour and thickness. Null where nothing changes.
   */
  | {
      readonly do: 'replan';
      readonly rows: number;
      readonly stitchMm: number | null;
      readonly rowMm: number | null;
      readonly from: string | null;
      readonly to: string | null;
      readonly cord: string | null;
      readonly colour: string | null;
      readonly metresPer100g: number | null;
    };

export type SessionFault =
  | { readonly code: 'session/nothing-to-confirm' }
  | { readonly code: 'session/too-many-steps'; readonly count: number; readonly left: number }
  | { readonly code: 'session/nothing-to-take-back' }
  | { readonly code: 'session/nothing-to-redo' }
  | { readonly code: 'session/no-such-step'; readonly step: number; readonly stepCount: number }
  | { readonly code: 'session/already-there'; readonly done: number }
  | { readonly code: 'session/nothing-to-say'; readonly what: 'note' | 'mark' }
  | { readonly code: 'session/not-a-name'; readonly most: number }
  | WeighFault
  | MeasuredFault
  | MeasureCordFault
  | RipBackFault
  | WayFault
  | ReplanFault;
