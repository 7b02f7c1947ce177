import { colourPattern } from '../planning/brief-schema.ts';
import type { Command } from '../session/command.ts';
import { isSlip } from '../session/mend/slip.ts';
import { fail, type JsonGroup, type Result, succeed } from '../shared/result.ts';

/** Lines that only a copy of a log holds, put in by a teacher: something to read, and a place to stop. */
export type Teaching = { readonly do: 'say'; readonly text: string } | { readonly do: 'pause' };

/** What happened around the work. None of these moves the place. */
export type Occurrence =
  /** A new sitting; `at` by the clock on the wall, ISO 8601 in UTC. */
  | { readonly do: 'resume'; readonly at: string }
  /** An orderly end of a sitting. */
  | { readonly do: 'quit' }
  /** The last step has been confirmed: tells a finished log from an interrupted one. */
  | { readonly do: 'finished' }
  | Teaching;

/** A kind that a later program writes; kept and passed over. */
interface UnknownEvent {
  readonly do: 'unknown';
  readonly name: string;
  readonly fields: JsonGroup;
}

export type LogEvent = Command | Occurrence | UnknownEvent;

/** One line of a log after the header. */
export interface Entry {
  readonly event: LogEvent;
  /** Since the line before, whole milliseconds; 0 at a resume, since the time away was not measured. */
  readonly afterMs: number;
  /** Steps confirmed when the event is done. */
  readonly stepsDone: number;
}

type Check = (value: unknown) => boolean;
type Recordable = Command | Occurrence;
/** Keys that every line has; no command may use them for its own. */
type TakenKey = 'afterMs' | 'stepsDone' | 'sum';
type FieldsOf<Kind> = {
  readonly [Field in Exclude<keyof Kind, 'do'>]-?: Field extends TakenKey ? never : Check;
};

const isWhole: Check = (value) => Number.isSafeInteger(value) && (value as number) >= 0;
const isText: Check = (value) => typeof value === 'string';
const isColour: Check = (value) => isText(value) && colourPattern.test(value as string);
const isNumber: Check = (value) => Number.isFinite(value);
const oneOf =
  (choices: readonly string[]): Check =>
  (value) =>
    choices.some((choice) => choice === value);
const orNull =
  (check: Check): Check =>
  (value) =>
    value === null || check(value);

/** An instant in UTC as `Date.toISOString` writes it. */
export const isInstant: Check = (value) =>
  typeof value === 'string' &&
  /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/.test(value) &&
  !Number.isNaN(Date.parse(value));

/** Every kind of line and what its own fields must hold; the compiler asks for a row when a command is added. */
const kinds: { readonly [Do in Recordable['do']]: FieldsOf<Extract<Recordable, { readonly do: Do }>> } = {
  confirm: { count: isWhole },
  back: {},
  redo: {},
  go: { done: isWhole },
  note: { text: isText },
  mark: { name: isText },
  rename: { name: isText },
  weigh: { yarn: isText, grams: isNumber },
  measured: { widthCm: isNumber, depthCm: isNumber },
  cord: { lengthCm: isNumber },
  rip: { done: isWhole },
  mend: {
    mistakes: (value) => Array.isArray(value) && value.length > 0 && value.every(isSlip),
    place: isWhole,
    how: oneOf(['now', 'rip', 'make-up']),
    thenDone: isWhole,
  },
  'on-the-way': {},
  stop: {},
  replan: {
    rows: isWhole,
    stitchMm: orNull(isNumber),
    rowMm: orNull(isNumber),
    from: orNull(isText),
    to: orNull(isText),
    cord: orNull(isText),
    colour: orNull(isColour),
    metresPer100g: orNull(isNumber),
  },
  resume: { at: isInstant },
  quit: {},
  finished: {},
  say: { text: isText },
  pause: {},
};

const checksByKind: ReadonlyMap<string, readonly [string, Check][]> = new Map(
  Object.entries(kinds).map(([kind, fields]) => [kind, Object.entries<Check>(fields)]),
);

/** Every kind of line and its own fields, as they stand in a log. */
export const logFields: ReadonlyMap<string, readonly string[]> = new Map(
  [...checksByKind].map(([kind, fields]) => [kind, fields.map(([field]) => field)]),
);

const occurrences: ReadonlySet<string> = new Set<LogEvent['do']>([
  'resume',
  'quit',
  'finished',
  'say',
  'pause',
  'unknown',
]);

export const isCommand = (event: LogEvent): event is Command => !occurrences.has(event.do);

/** An entry as plain JSON, without its checksum. */
export function entryJson({ event, afterMs, stepsDone }: Entry): JsonGroup {
  return event.do === 'unknown'
    ? { do: event.name, ...event.fields, afterMs, stepsDone }
    : { ...event, afterMs, stepsDone };
}

/** Reads what `entryJson` gives. Strict: a kind that is known must have its own fields and no others. */
export function readEntry(json: unknown): Result<Entry, 'wrong-fields'> {
  if (typeof json !== 'object' || json === null) return fail('wrong-fields');
  const { do: kind, afterMs, stepsDone, ...fields } = json as Record<string, unknown>;
  if (typeof kind !== 'string' || !isWhole(afterMs) || !isWhole(stepsDone)) return fail('wrong-fields');
  const checks = checksByKind.get(kind);
  if (checks && !fits(fields, checks)) return fail('wrong-fields');
  const event = checks
    ? ({ do: kind, ...fields } as LogEvent)
    : { do: 'unknown' as const, name: kind, fields };
  return succeed({ event, afterMs: afterMs as number, stepsDone: stepsDone as number });
}

function fits(fields: JsonGroup, checks: readonly [string, Check][]): boolean {
  const known = checks.filter(([field, check]) => Object.hasOwn(fields, field) && check(fields[field]));
  return known.length === checks.length && Object.keys(fields).length === checks.length;
}
