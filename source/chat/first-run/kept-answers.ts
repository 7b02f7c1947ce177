/**
 * Answers that come from somewhere else than the keyboard: something on the shelf that was named, or a swatch that was guided.
 * They are kept among the answers as the JSON of a brief, and read as they stand.
 */
import * as v from 'valibot';
import { bedSchema, swatchSchema, yarnSchema } from '../../planning/brief-schema.ts';
import { nameOnShelf, type Shelf, yarnOf } from '../../planning/shelf.ts';
import type { QuestionId, Values, YarnAnswer } from './answers.ts';

/** The answer in place of a name on the shelf; null where the line is no such name. */
export function fromShelf(id: QuestionId, line: string, shelf: Shelf): string | null {
  const kind = id === 'first' || id === 'second' ? 'yarn' : id === 'bed' || id === 'swatch' ? id : null;
  const name = kind && nameOnShelf(shelf, kind, line);
  if (name === null) return null;
  const yarn = shelf.yarns[name];
  if (kind === 'bed') return JSON.stringify(shelf.beds[name]);
  if (kind === 'swatch') return JSON.stringify(shelf.swatches[name]);
  return yarn ? JSON.stringify({ name, ...yarnOf(yarn) }) : null;
}

const measured = v.strictObject({ ...swatchSchema.entries, widthCm: v.number(), heightCm: v.number() });
const named = v.strictObject({ name: v.string(), ...yarnSchema.entries });

/** The value of an answer that is JSON; null where it is none. */
export function readKept<Id extends QuestionId>(id: Id, line: string): Values[Id] | null {
  const json = line.startsWith('{') ? parse(line) : null;
  return json === null ? null : (readValue(id, json) as Values[Id] | null);
}

function readValue(id: QuestionId, json: unknown): unknown {
  switch (id) {
    case 'bed':
      return read(bedSchema, json);
    case 'swatch':
      return read(measured, json);
    case 'first':
    case 'second':
      return yarnIn(json);
    default:
      return null;
  }
}

function yarnIn(json: unknown): YarnAnswer | null {
  const yarn = read(named, json);
  return yarn && { ...yarn, grams: yarn.grams ?? null, isUsualLength: false };
}

function read<Schema extends v.GenericSchema>(schema: Schema, json: unknown): v.InferOutput<Schema> | null {
  const found = v.safeParse(schema, json);
  return found.success ? found.output : null;
}

function parse(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return null;
  }
}
