import type { BriefFault, PlanFault } from '../planning/fault.ts';
import type { SessionFault } from '../session/command.ts';

/** What is wrong with a line by itself. A lost line shows as the `checksum` of the next one, as a changed line does. */
export type LineFault =
  | 'not-text'
  | 'not-json'
  | 'no-checksum'
  | 'checksum'
  | 'wrong-fields'
  /** The mark of a finished bag where the bag is not finished. */
  | 'out-of-place';

/** Why a log cannot be read to its end. Lines count from 1, the header being the first. */
export type JournalFault =
  | { readonly code: 'journal/not-a-log' }
  /** Empty, or cut off inside its first line: nothing was recorded yet. */
  | { readonly code: 'journal/no-header' }
  | { readonly code: 'journal/newer-version'; readonly version: number; readonly known: number }
  | {
      readonly code: 'journal/damaged-line';
      readonly line: number;
      readonly reason: LineFault;
      /** Where the last sound line is found further on, how many steps it says were done; null where there is none. */
      readonly laterStep: number | null;
    }
  | {
      readonly code: 'journal/step-differs';
      readonly line: number;
      readonly recorded: number;
      readonly reached: number;
    }
  | { readonly code: 'journal/command-refused'; readonly line: number; readonly fault: SessionFault }
  /** A kind of event that this program does not know, and that moved the place. */
  | { readonly code: 'journal/unknown-event'; readonly line: number; readonly name: string }
  | { readonly code: 'journal/brief'; readonly program: string; readonly fault: BriefFault | PlanFault }
  | {
      readonly code: 'journal/plan-differs';
      readonly program: string;
      readonly figure: string;
      readonly recorded: string;
      readonly planned: string;
    };
